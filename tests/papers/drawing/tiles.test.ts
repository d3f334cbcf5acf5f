import { describe, expect, test } from "vitest";
import { tilesOf } from "../../../core/papers/drawing/tiles.ts";
import type { PartPicture, Picture } from "../../../core/picture/index.ts";

function part(id: string, left: number, top: number): PartPicture {
  const box = { left, top, right: left + 4, bottom: top + 4 };
  return { id, strokes: [], box, room: [box], extent: box, lettering: [], terminals: [] };
}
const picture: Picture = {
  parts: [part("a", 0, 0), part("b", 20, 0), part("c", 40, 0)],
  wires: [
    {
      id: "w1",
      route: [
        [4, 2],
        [40, 2],
      ],
      ends: ["a.1", "c.1"],
      extent: { left: 4, top: 2, right: 40, bottom: 2 },
      hops: [],
      lettering: [],
    },
  ],
  joints: [],
  box: { left: 0, top: 0, right: 44, bottom: 4 },
};

describe("a drawing too wide for a page", () => {
  const tiles = tilesOf(picture, { width: 28, height: 20 });

  test("is cut between symbols, each standing whole on one page", () => {
    expect(tiles.flatMap(({ parts }) => parts.map(({ id }) => id)).sort()).toEqual(["a", "b", "c"]);
    for (const { box, parts } of tiles) {
      expect(box.right - box.left).toBeLessThanOrEqual(28);
      expect(parts.every((each) => each.box.left >= box.left && each.box.right <= box.right)).toBe(true);
    }
  });

  test("its wires go on where they left off", () => {
    const pieces = tiles.flatMap(({ wires }) => wires);
    expect(pieces.map(({ cuts }) => cuts)).toEqual([
      { start: false, end: true },
      { start: true, end: false },
    ]);
    expect(pieces[0]!.route.at(-1)).toEqual(pieces[1]!.route[0]);
  });
});

test("a drawing that fits is one page with every wire whole", () => {
  const [tile, ...others] = tilesOf(picture, { width: 60, height: 20 });
  expect(others).toEqual([]);
  expect(tile!.wires.map(({ cuts, route }) => [cuts, route])).toEqual([
    [{ start: false, end: false }, picture.wires[0]!.route],
  ]);
});
