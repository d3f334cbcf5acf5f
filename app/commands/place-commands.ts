import type { PlaceId } from "../store/editor-state.ts";
import { effect, type Command } from "./command.ts";

const show = (id: PlaceId, title: string, keys: readonly string[], words = ""): Command => ({
  id: `show ${id}`,
  title,
  group: "Places",
  keys,
  words,
  plan: () => effect({ do: "show", place: id }),
});

export const placeCommands: readonly Command[] = [
  show("command-box", "Find anything to do", ["Mod+K", "/"], "command search"),
  show("shelf", "Shelf: parts to add", ["S"], "insert parts symbols"),
  show("card", "Card: all about what is selected", ["C"], "settings properties"),
  show("controls", "Controls: switches, keys and signals", ["K"], "operate situations"),
  show("snags", "Snags: what is wrong", ["Shift+S"], "problems errors warnings"),
  show("outline", "Outline: parts, terminals and wires as a list", ["O"], "tree list screen reader"),
  show("drawings", "Drawings kept in this browser", ["D"], "open files recent"),
  show("papers", "Papers to print or save", ["P"], "export svg csv print"),
  show("revisions", "Revisions built, and what differs", [], "compare as built change log"),
  show("readings", "Take readings with a meter", [], "test sheet prove measure"),
  show("bench", "Bench: a symbol of your own", ["B"], "custom draw own symbol edit"),
  show("settings", "Settings", [","], "preferences theme units words"),
  show("help", "Help", ["?", "F1"], "symbols marks keys cautions"),
];
