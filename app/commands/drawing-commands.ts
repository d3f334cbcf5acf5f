import { EXAMPLES } from "../../core/examples/index.ts";
import { effect, type Command } from "./command.ts";

export const drawingCommands: readonly Command[] = [
  { id: "new", title: "New drawing", group: "Drawing", keys: ["Alt+N"], plan: () => effect({ do: "new-drawing" }) },
  {
    id: "open",
    title: "Open a file",
    group: "Drawing",
    keys: ["Mod+O"],
    words: "load",
    plan: () => effect({ do: "open-file" }),
  },
  {
    id: "save",
    title: "Save to a file",
    group: "Drawing",
    keys: ["Mod+S"],
    words: "download keep",
    plan: () => effect({ do: "save-file" }),
  },
  {
    id: "copy-drawing",
    title: "Make a copy of this drawing",
    group: "Drawing",
    words: "duplicate save as",
    plan: () => effect({ do: "copy-drawing" }),
  },
  {
    id: "take-over",
    title: "Edit here and not in the other tab",
    group: "Drawing",
    plan: (state) =>
      state.access === "looking" ? effect({ do: "take-over" }) : { reason: "This tab is the one that edits" },
  },
  {
    id: "print",
    title: "Print",
    group: "Drawing",
    keys: ["Mod+P"],
    words: "paper",
    plan: () => effect({ do: "show", place: "papers" }),
  },
  ...EXAMPLES.map((example): Command => ({
    id: `demo ${example.name}`,
    title: `Open demo: ${example.title}`,
    group: "Drawing",
    words: "example",
    plan: () => effect({ do: "open-demo", name: example.name }),
  })),
];
