import { describe, expect, test } from "vitest";
import { changeProps } from "../../../app/commands/change-props.ts";
import type { Plan } from "../../../app/commands/command.ts";
import { describeEdit } from "../../../app/commands/describe-edit.ts";
import { kindsToSwapFor, swapKind } from "../../../app/commands/swap-kind.ts";
import { applyEdits, type Document } from "../../../core/document/index.ts";
import { readCircuitFile, writeCircuitFile } from "../../../core/file/index.ts";
import { kindOf } from "../../../core/parts/index.ts";
import { lampCircuit } from "../drawing.ts";

const opens = (document: Document) => readCircuitFile(writeCircuitFile(document)).ok;
const part = (document: Document, id: string) => document.parts.find((one) => one.id === id)!;

const editsOf = (plan: Plan) => ("reason" in plan ? [] : (plan.transaction?.edits ?? []));

const relayCircuit: Document = {
  ...lampCircuit,
  situations: [],
  parts: [
    ...lampCircuit.parts,
    { id: "k1", kind: "relay", at: [20, 12], props: { contact: "changeover" }, covers: { "87a": "covered" } },
  ],
  wires: [...lampCircuit.wires, { id: "w5", from: "f1.2", to: "k1.30" }, { id: "w6", from: "k1.87a", to: "la1.+" }],
};

describe("changing a setting that takes a terminal away", () => {
  test("takes the wires on it and its cover along", () => {
    const after = applyEdits(relayCircuit, changeProps(relayCircuit, part(relayCircuit, "k1"), { contact: "make" }));
    expect(after.wires.map((wire) => wire.id)).not.toContain("w6");
    expect(after.wires.map((wire) => wire.id)).toContain("w5");
    expect(part(after, "k1").covers).toEqual({});
    expect(opens(after)).toBe(true);
  });
});

describe("swapping a part for another kind", () => {
  test("keeps the wires on terminals of the same name", () => {
    const plan = swapKind(lampCircuit, part(lampCircuit, "f1"), kindOf("breaker")!);
    const after = applyEdits(lampCircuit, editsOf(plan));
    expect(part(after, "f1")).toMatchObject({ kind: "breaker", props: { ratingA: 10 } });
    expect(after.wires).toEqual(lampCircuit.wires);
    expect(opens(after)).toBe(true);
  });

  test("puts wires of other terminals on free ones, in order", () => {
    const plan = swapKind(lampCircuit, part(lampCircuit, "la1"), kindOf("resistor")!);
    const after = applyEdits(lampCircuit, editsOf(plan));
    expect(after.wires.find((wire) => wire.id === "w3")!.to).toBe("la1.1");
    expect(after.wires.find((wire) => wire.id === "w4")!.from).toBe("la1.2");
    expect(opens(after)).toBe(true);
  });

  test("is offered only where every wire finds a terminal", () => {
    expect(kindsToSwapFor(relayCircuit, part(relayCircuit, "la1")).map((kind) => kind.kind)).not.toContain("chassis");
    expect(swapKind(lampCircuit, part(lampCircuit, "la1"), kindOf("chassis")!)).toHaveProperty("reason");
  });
});

describe("saying what an edit will change", () => {
  test.each([
    [{ op: "set-props", id: "f1", change: { ratingA: 5 } }, "F1: rating 10 A → 5 A"],
    [{ op: "set-wire", id: "w2", change: { size: "12 AWG" } }, "wire W2: size 14 AWG → 12 AWG"],
    [{ op: "set-wire", id: "w2", change: { colour: "RD" } }, "wire W2: colour not said → RD"],
    [{ op: "remove-part", id: "s1" }, "Removes S1 and the wires on it"],
    [{ op: "add-part", part: { id: "f2", kind: "fuse" } }, "Adds fuse F2"],
    [{ op: "add-wire", wire: { id: "w9", from: "f2.1", to: "la1.+" } }, "Adds wire W9 from F2.1 to terminal + of LA1"],
    [{ op: "set-cover", terminal: "s1.1", cover: "covered" }, "terminal 1 of S1: covered"],
  ] as const)("%o", (edit, words) => {
    expect(describeEdit(lampCircuit, edit)).toBe(words);
  });

  test("settings of several choices are said by their labels", () => {
    const edit = { op: "set-props", id: "k1", change: { contact: "make" } } as const;
    expect(describeEdit(relayCircuit, edit)).toBe(
      "K1: contacts Changeover, 87a live at rest → One make contact (4 pins)",
    );
  });
});
