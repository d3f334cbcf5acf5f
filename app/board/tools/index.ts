import type { BoardTool } from "../board-controller.ts";
import { panTool } from "./pan-tool.ts";
import { placeTool } from "./place-tool.ts";
import { probeTool } from "./probe-tool.ts";
import { selectTool } from "./select-tool.ts";
import type { Tool } from "./tool.ts";
import { wireTool } from "./wire-tool.ts";

/** Every way of working on the Board. To add one: its file, its name in `BoardTool`, and its line here. Whoever runs one only hands back the state it got from it. */
export const tools: Readonly<Record<BoardTool, Tool<unknown>>> = {
  select: selectTool,
  wire: wireTool,
  pan: panTool,
  place: placeTool,
  probe: probeTool,
};
