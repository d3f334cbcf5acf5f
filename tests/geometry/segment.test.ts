import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  boxesTouch,
  BoxGrid,
  Nearby,
  crossingOf,
  distanceToSegment,
  nearestOnRoute,
  straightened,
} from "../../core/geometry/index.ts";

describe("runs of a wire", () => {
  it("cross where a level one passes an upright one", () => {
    expect(crossingOf([0, 2], [8, 2], [3, 0], [3, 5])).toEqual([3, 2]);
  });

  it("do not cross where one only ends on the other", () => {
    expect(crossingOf([0, 2], [8, 2], [3, 2], [3, 5])).toBeNull();
    expect(crossingOf([0, 2], [3, 2], [3, 0], [3, 5])).toBeNull();
  });

  it("are as far as their nearest spot", () => {
    expect(distanceToSegment([4, 3], [0, 0], [8, 0])).toBe(3);
    expect(distanceToSegment([11, 4], [0, 0], [8, 0])).toBe(5);
    expect(distanceToSegment([3, 4], [0, 0], [0, 0])).toBe(5);
  });

  it("say which of them a point is nearest to", () => {
    const route = [
      [0, 0],
      [4, 0],
      [4, 6],
    ] as const;
    expect(nearestOnRoute([5, 3], route)).toEqual({ segment: 1, at: [4, 3], distance: 1 });
  });

  it("lose needless points and keep a turn back", () => {
    expect(
      straightened([
        [0, 0],
        [0, 0],
        [2, 0],
        [5, 0],
        [5, 3],
      ]),
    ).toEqual([
      [0, 0],
      [5, 0],
      [5, 3],
    ]);
    expect(
      straightened([
        [0, 0],
        [5, 0],
        [2, 0],
      ]),
    ).toEqual([
      [0, 0],
      [5, 0],
      [2, 0],
    ]);
  });
});

describe("a grid of boxes", () => {
  it("finds every box that touches the place asked for", () => {
    const coordinate = fc.integer({ min: -60, max: 60 });
    const box = fc.tuple(coordinate, coordinate, fc.nat(20), fc.nat(20)).map(([left, top, width, height]) => {
      return { left, top, right: left + width, bottom: top + height };
    });
    fc.assert(
      fc.property(fc.array(box, { maxLength: 30 }), box, (boxes, place) => {
        const grid = new BoxGrid(8);
        boxes.forEach((each, index) => grid.add(index, each));
        const near = grid.near(place);
        const touching = [...boxes.keys()].filter((index) => boxesTouch(boxes[index]!, place));
        expect(near).toEqual(expect.arrayContaining(touching));
        expect(new Set(near).size).toBe(near.length);
      }),
    );
  });

  it("forgets a box taken out", () => {
    const grid = new BoxGrid(8);
    const box = { left: 0, top: 0, right: 20, bottom: 20 };
    grid.add(7, box);
    grid.remove(7, box);
    expect(grid.near(box)).toEqual([]);
  });
});

describe("boxes asked about by place", () => {
  it("are found as by looking at each, however many were asked for or added before", () => {
    const coordinate = fc.integer({ min: -90, max: 90 });
    const box = fc
      .tuple(coordinate, coordinate, fc.nat(12), fc.nat(12))
      .map(([left, top, width, height]) => ({ left, top, right: left + width, bottom: top + height }));
    const steps = fc.array(fc.tuple(fc.boolean(), box), { maxLength: 60 });
    fc.assert(
      fc.property(steps, (all) => {
        const nearby = new Nearby();
        const added: Parameters<typeof boxesTouch>[0][] = [];
        for (const [isQuestion, each] of all) {
          if (!isQuestion) {
            nearby.add(each);
            added.push(each);
            continue;
          }
          const expected = [...added.keys()].filter((index) => boxesTouch(added[index]!, each));
          expect(nearby.touching(each).toSorted((a, b) => a - b)).toEqual(expected);
        }
      }),
    );
  });
});
