import { zoomedAt } from "../board/zoom.ts";
import { documentOf, type EditorState } from "../store/editor-state.ts";
import { isMapShown } from "../store/map-of.ts";
import { effect, type Command, type Plan } from "./command.ts";

export const lookCommands: readonly Command[] = [
  {
    id: "fit",
    title: "Show the whole drawing",
    group: "Look",
    keys: ["0", "Mod+0"],
    words: "fit zoom",
    plan: () => effect({ do: "reveal", places: [] }),
  },
  {
    id: "fit-selection",
    title: "Show what is selected",
    group: "Look",
    keys: ["Z"],
    words: "zoom fit",
    plan: (state) =>
      state.selection.size > 0
        ? effect({ do: "reveal", places: [...state.selection] })
        : { reason: "Nothing is selected" },
  },
  {
    id: "zoom-in",
    title: "Closer",
    group: "Look",
    keys: ["+", "="],
    words: "zoom in bigger",
    plan: (state) => zoom(state, 1.25),
  },
  {
    id: "zoom-out",
    title: "Farther",
    group: "Look",
    keys: ["-"],
    words: "zoom out smaller",
    plan: (state) => zoom(state, 0.8),
  },
  {
    id: "lettering",
    title: "Show or hide wire numbers and ratings",
    group: "Look",
    keys: ["L"],
    words: "labels captions lettering",
    plan: (state) => effect({ do: "preferences", change: { lettering: !state.preferences.lettering } }),
  },
  {
    id: "map",
    title: "Show or hide the map of the drawing",
    group: "Look",
    keys: ["Shift+M"],
    words: "overview mini-map navigator",
    plan: (state) => effect({ do: "preferences", change: { map: isMapShown(state) ? "off" : "on" } }),
    reason: (state) => (documentOf(state).parts.length === 0 ? "The drawing is empty" : null),
  },
  theme("light", "Light theme: ink on paper"),
  theme("dark", "Dark theme: night"),
  theme("sunlight", "Sunlight theme: strongest contrast"),
  theme("auto", "Theme as the device has it"),
];

function theme(name: EditorState["preferences"]["theme"], title: string): Command {
  const plan = (state: EditorState): Plan =>
    state.preferences.theme === name
      ? { reason: "It is on already" }
      : effect({ do: "preferences", change: { theme: name } });
  return { id: `theme-${name}`, title, group: "Look", words: "colours contrast", plan };
}

function zoom(state: EditorState, factor: number): Plan {
  const { view, boardSize } = state;
  const zoomed = zoomedAt(view, factor, { x: boardSize.width / 2, y: boardSize.height / 2 });
  if (zoomed.scale === view.scale)
    return { reason: factor > 1 ? "This is as close as it goes" : "This is as far as it goes" };
  return effect({ do: "view", view: zoomed });
}
