import { documentOf, type EditorState, type InstrumentId } from "../store/editor-state.ts";
import { effect, type Command, type Plan } from "./command.ts";

export const tryOutCommands: readonly Command[] = [
  {
    id: "touch",
    title: "Touch test: is this metal live, and what if it touches the frame",
    short: "Touch test",
    group: "Try out",
    keys: ["T"],
    words: "probe hot short",
    plan: (state) => instrument(state, "touch"),
  },
  {
    id: "meter",
    title: "Meter: volts, amps or ohms anywhere",
    short: "Meter",
    group: "Try out",
    keys: ["M"],
    words: "measure probe voltage current resistance",
    plan: (state) => instrument(state, "meter"),
  },
  {
    id: "drill",
    title: "Drill: play a fault and find it",
    short: "Drill",
    group: "Try out",
    keys: ["Shift+D"],
    words: "fault simulate broken blown",
    plan: (state) => instrument(state, "drill"),
  },
  {
    id: "size-it",
    title: "Size it: choose wires, fuses and contacts",
    short: "Size it",
    group: "Try out",
    keys: ["Shift+W"],
    words: "gauge awg mm2 fuse rating propose",
    plan: (state) => needsParts(state) ?? effect({ do: "show", place: "sizing" }),
  },
];

function instrument(state: EditorState, id: InstrumentId): Plan {
  return needsParts(state) ?? effect({ do: "instrument", instrument: state.instrument === id ? null : id });
}

function needsParts(state: EditorState): Plan | null {
  return documentOf(state).parts.length === 0 ? { reason: "The drawing is empty" } : null;
}
