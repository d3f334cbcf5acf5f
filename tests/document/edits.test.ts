import { describe, expect, test } from "vitest";
import { applyEdits, splitAddress, type Document, type Edit } from "../../core/document/index.ts";

const drawing: Document = {
  format: "groundstrap",
  version: 1,
  parts: [
    { id: "bat", kind: "battery", props: { restV: 12.7 } },
    { id: "f1", kind: "fuse", label: "Lamps", covers: { "1": "covered" } },
  ],
  wires: [
    { id: "w1", from: "bat.+", to: "f1.1", size: "14 AWG", metres: 0.2 },
    { id: "w2", from: "bat.-", to: "bat.+" },
  ],
};

function edited(...edits: Edit[]): Document {
  return applyEdits(drawing, edits);
}

describe("edits", () => {
  test("leave the document they start from alone and share what they don't touch", () => {
    const before = JSON.stringify(drawing);
    const after = edited({ op: "set-wire", id: "w1", change: { size: "12 AWG" } });
    expect(JSON.stringify(drawing)).toBe(before);
    expect(after.wires[0]?.size).toBe("12 AWG");
    expect(after.parts).toBe(drawing.parts);
    expect(after.wires[1]).toBe(drawing.wires[1]);
  });

  test("that change nothing give the same document back", () => {
    expect(edited()).toBe(drawing);
  });

  test("freeze what they give", () => {
    expect(Object.isFrozen(edited({ op: "set-sheet", change: { title: "Tipper" } }).sheet)).toBe(true);
  });

  test("remove a part with every wire on it", () => {
    const after = edited({ op: "remove-part", id: "f1" });
    expect(after.parts.map(({ id }) => id)).toEqual(["bat"]);
    expect(after.wires.map(({ id }) => id)).toEqual(["w2"]);
  });

  test("set a key to nothing take it out", () => {
    const after = edited(
      { op: "set-wire", id: "w1", change: { metres: undefined } },
      { op: "set-part", id: "f1", change: { label: undefined } },
      { op: "set-cover", terminal: "f1.1", cover: undefined },
      { op: "set-props", id: "bat", change: { restV: undefined } },
    );
    expect(after.wires[0]).toEqual({ id: "w1", from: "bat.+", to: "f1.1", size: "14 AWG" });
    expect(after.parts).toEqual([
      { id: "bat", kind: "battery", props: {} },
      { id: "f1", kind: "fuse", covers: {} },
    ]);
  });

  test("work one after the other", () => {
    const after = edited(
      { op: "add-part", part: { id: "g1", kind: "chassis" } },
      { op: "add-wire", wire: { id: "w3", from: "bat.-", to: "g1.g" } },
      { op: "set-wire", id: "w3", change: { metres: 0.3 } },
      { op: "set-system", change: { nominalV: 24 } },
      { op: "set-situations", situations: [{ id: "parked" }] },
    );
    expect(after.wires[2]).toEqual({ id: "w3", from: "bat.-", to: "g1.g", metres: 0.3 });
    expect(after.system).toEqual({ nominalV: 24 });
    expect(after.situations).toEqual([{ id: "parked" }]);
  });

  test.each<[Edit, string]>([
    [{ op: "set-part", id: "nobody", change: {} }, 'no part "nobody"'],
    [{ op: "remove-part", id: "nobody" }, 'no part "nobody"'],
    [{ op: "remove-wire", id: "w9" }, 'no wire "w9"'],
    [{ op: "set-cover", terminal: "k9.30", cover: "bare" }, 'no part "k9"'],
    [{ op: "add-part", part: { id: "w1", kind: "fuse" } }, '"w1" is already taken'],
    [{ op: "add-wire", wire: { id: "bat", from: "bat.+", to: "f1.1" } }, '"bat" is already taken'],
  ])("%o is refused with the id", (edit, words) => {
    expect(() => edited(edit)).toThrow(words);
  });
});

test.each([
  ["k1.87a", ["k1", "87a"]],
  ["conv.out+", ["conv", "out+"]],
  ["lonely", ["lonely", ""]],
])("address %s is %o", (address, halves) => {
  expect(splitAddress(address)).toEqual(halves);
});
