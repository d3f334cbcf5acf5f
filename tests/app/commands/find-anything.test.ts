import { describe, expect, test } from "vitest";
import { findAnything } from "../../../app/commands/find-anything.ts";
import type { Document } from "../../../core/document/index.ts";
import { lampCircuit, testEditor } from "../drawing.ts";

const labelled: Document = {
  ...lampCircuit,
  parts: [
    ...lampCircuit.parts.map((part) => (part.id === "la1" ? { ...part, label: "Awning left" } : part)),
    { id: "g1", kind: "ground-strip" },
  ],
  wires: lampCircuit.wires.map((wire) => (wire.id === "w4" ? { ...wire, label: "G4" } : wire)),
};
const { editor } = testEditor(labelled);
const found = (sought: string) => findAnything(editor.state, sought).map(({ id }) => id);

describe("finding anything", () => {
  test("a part or a terminal asked for by its very name comes first", () => {
    expect(found("S1")[0]).toBe("go s1");
    expect(found("la1 +")[0]).toBe("go la1.+");
    expect(found("la1.+")[0]).toBe("go la1.+");
  });

  test("labels of parts and wires find them", () => {
    expect(found("awning")[0]).toBe("go la1");
    expect(found("g4")[0]).toBe("go w4");
  });

  test("other words for a kind find its parts, after the commands of that name", () => {
    const earth = found("earth");
    expect(earth).toContain("go g1");
    expect(found("ground strip").indexOf("add ground-strip")).toBeLessThan(found("ground strip").indexOf("go g1"));
    expect(found("ground strip").indexOf("go g1")).toBeLessThan(found("ground strip").indexOf("go g1.1"));
  });

  test("choosing one selects it and brings it into view; a terminal is marked on its part", () => {
    const plan = findAnything(editor.state, "la1 +")[0]!.plan(editor.state);
    expect(plan).toMatchObject({
      select: ["la1"],
      effects: [
        { do: "spotlight", places: ["la1.+"] },
        { do: "reveal", places: ["la1.+"] },
      ],
    });
  });

  test("nothing typed lists what can be done and nothing of the drawing", () => {
    expect(found(" ").some((id) => id.startsWith("go "))).toBe(false);
  });
});

test("in a drawing of 5 000 parts each letter typed is answered before the next", () => {
  const parts = Array.from({ length: 5000 }, (_, at) => ({ id: `la${at}`, kind: "lamp", at: [at, 0] as const }));
  const wires = parts.slice(1).map(({ id }, at) => ({ id: `w${at}`, from: `la${at}.-`, to: `${id}.+` }));
  const { editor: large } = testEditor({ format: "groundstrap", version: 1, parts, wires });
  findAnything(large.state, "la4999");
  const before = performance.now();
  expect(findAnything(large.state, "la4999")[0]!.id).toBe("go la4999");
  // A quick typist's pace is a letter in 100 ms; the rest is for a busy machine. Naming by search took seconds.
  expect(performance.now() - before).toBeLessThan(1000);
});
