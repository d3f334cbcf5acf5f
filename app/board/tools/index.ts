import type { BoardTool } from "../board-controller.ts";
import { panTool } from "./pan-tool.ts";
import { placeTool } from "./place-tool.ts";
import { probeTool } from "./probe-tool.ts";
import { selectTool } from "./select-tool.ts";
import type { Tool } from "./tool.ts";
import { wireTool } from "./wire-tool.ts";

/** Every way of working on the Board. To add one: its file, its name in `BoardTool`, and its line here. */
export const tools: Readonly<Record<BoardTool, Tool<unknown>>> = {
  select: erased(selectTool),
  wire: erased(wireTool),
  pan: erased(panTool),
  place: erased(placeTool),
  probe: erased(probeTool),
};

/** Each tool's state is its own affair; whoever runs it only hands back the state it got from the same tool. */
function erased<S>(tool: Tool<S>): Tool<unknown> {
  return tool as Tool<unknown>;
}
