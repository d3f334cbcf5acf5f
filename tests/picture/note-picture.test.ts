import { expect, test } from "vitest";
import { pictureOf } from "../../core/picture/index.ts";
import { circuit } from "../support/circuit.ts";

const lamp = circuit("bat:battery > la1:lamp 21W > bat");
const note = {
  id: "n1",
  at: [100, 40],
  text: "Drill 8 mm here\nand grease the bare edge before the strap goes on",
} as const;

test("a note stands on the sheet in lines, and the whole drawing reaches to it", () => {
  const { parts, box } = pictureOf({ ...lamp, notes: [note] });
  const drawn = parts.at(-1)!;
  expect(drawn.lettering.map(({ text }) => text)).toEqual([
    "Drill 8 mm here",
    "and grease the bare edge",
    "before the strap goes on",
  ]);
  expect(drawn.lettering.every(({ role, at }) => role === "note" && at[0] === 100)).toBe(true);
  expect(box.right).toBeGreaterThan(100);
  expect(box.bottom).toBeGreaterThan(41);
});

test("wires run where they ran without it", () => {
  const routes = (notes: readonly (typeof note)[]) => pictureOf({ ...lamp, notes }).wires.map(({ route }) => route);
  const [x, y] = routes([])[0]![0]!;
  expect(routes([{ ...note, at: [x, y] as unknown as typeof note.at }])).toEqual(routes([]));
});

test("a note with no room in its words still has a box to point at", () => {
  const { parts } = pictureOf({ ...lamp, notes: [{ ...note, text: "\n" }] });
  expect(parts.at(-1)!.box.bottom).toBeGreaterThan(parts.at(-1)!.box.top);
});
