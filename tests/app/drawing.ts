import type { Document } from "../../core/document/index.ts";
import { Editor } from "../../app/store/editor.ts";
import type { TextKeeper } from "../../app/store/preferences.ts";
import type { Ask } from "../../app/worker/protocol.ts";

/** Battery, fuse, switch, lamp and back: everything placed, one situation saved. */
export const lampCircuit: Document = {
  format: "groundstrap",
  version: 1,
  sheet: { title: "Lamp" },
  parts: [
    { id: "b1", kind: "battery", at: [0, 0] },
    { id: "f1", kind: "fuse", at: [10, 0], props: { ratingA: 10 } },
    { id: "s1", kind: "switch", at: [20, 0] },
    { id: "la1", kind: "lamp", at: [30, 0], props: { watts: 21 } },
  ],
  wires: [
    { id: "w1", from: "b1.+", to: "f1.1", size: "14 AWG", metres: 0.1 },
    { id: "w2", from: "f1.2", to: "s1.1", size: "14 AWG", metres: 1 },
    { id: "w3", from: "s1.2", to: "la1.+", size: "14 AWG", metres: 2 },
    { id: "w4", from: "la1.-", to: "b1.-", size: "14 AWG", metres: 3 },
  ],
  situations: [{ id: "on", name: "Lamp on", set: { s1: "on" } }],
};

export function textKeeper(): TextKeeper {
  const kept = new Map<string, string>();
  return { getItem: (key) => kept.get(key) ?? null, setItem: (key, value) => void kept.set(key, value) };
}

/** An editor with a clock set by hand, and the questions it put to the analysis. */
export function testEditor(document: Document = lampCircuit) {
  const asked: Ask[] = [];
  const clock = { nowMs: 0 };
  const editor = new Editor({
    now: () => clock.nowMs,
    preferences: textKeeper(),
    deviceIsDark: () => false,
    ask: (question) => asked.push(question),
  });
  editor.open({ id: "lamp", document, save: 0 });
  return { editor, asked, clock };
}
