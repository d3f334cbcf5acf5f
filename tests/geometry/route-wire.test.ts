import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Box,
  type Point,
  type RouteEnd,
  routeCorridor,
  routeWire,
  segmentEnters,
  stepOf,
} from "../../core/geometry/index.ts";

const whole = fc.integer({ min: -20, max: 20 });
const point = fc.tuple(whole, whole);
const side = fc.constantFrom("left" as const, "right" as const, "up" as const, "down" as const);
const end: fc.Arbitrary<RouteEnd> = fc.record({ at: point, exit: side });
const box: fc.Arbitrary<Box> = fc
  .tuple(whole, whole, fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 }))
  .map(([left, top, width, height]) => ({ left, top, right: left + width, bottom: top + height }));
const via = fc.array(point, { maxLength: 3 });

const isApart = (a: RouteEnd, b: RouteEnd) => Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1]) > 0;

describe("a wire's route", () => {
  it("runs level or upright from exactly one end to exactly the other", () => {
    fc.assert(
      fc.property(end, end, via, fc.array(box, { maxLength: 5 }), (from, to, corners, boxes) => {
        const route = routeWire(from, to, corners, boxes);
        expect(route[0]).toEqual(from.at);
        expect(route.at(-1)).toEqual(to.at);
        for (let i = 1; i < route.length; i++) {
          expect(route[i - 1]![0] === route[i]![0] || route[i - 1]![1] === route[i]![1]).toBe(true);
        }
      }),
    );
  });

  it("leaves each terminal by its exit", () => {
    fc.assert(
      fc.property(end, end, fc.array(box, { maxLength: 5 }), (from, to, boxes) => {
        fc.pre(isApart(from, to));
        const route = routeWire(from, to, [], boxes);
        expect(leaves(route[0]!, route[1]!, from.exit)).toBe(true);
        expect(leaves(route.at(-1)!, route.at(-2)!, to.exit)).toBe(true);
      }),
    );
  });

  it("passes through every via point, in order", () => {
    fc.assert(
      fc.property(end, end, via, (from, to, corners) => {
        const route = routeWire(from, to, corners, []);
        let segment = 0;
        for (const corner of corners) {
          while (segment < route.length - 1 && !isOn(corner, route[segment]!, route[segment + 1]!)) segment++;
          expect(segment).toBeLessThan(Math.max(1, route.length - 1));
        }
      }),
    );
  });

  it("never runs straight back on itself between two terminals apart", () => {
    fc.assert(
      fc.property(end, end, fc.array(box, { maxLength: 4 }), (from, to, boxes) => {
        fc.pre(Math.hypot(from.at[0] - to.at[0], from.at[1] - to.at[1]) > 3);
        const route = routeWire(from, to, [], boxes);
        for (let i = 2; i < route.length; i++) {
          const [a, b, c] = [route[i - 2]!, route[i - 1]!, route[i]!];
          expect((b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1])).toBeCloseTo(0);
        }
      }),
    );
  });

  it("hangs on nothing outside its corridor", () => {
    fc.assert(
      fc.property(end, end, via, fc.array(box, { maxLength: 5 }), (from, to, corners, boxes) => {
        const corridor = routeCorridor([from.at, ...corners, to.at]);
        const far: Box = { left: corridor.right + 1, top: 0, right: corridor.right + 9, bottom: 5 };
        expect(routeWire(from, to, corners, [...boxes, far])).toEqual(routeWire(from, to, corners, boxes));
      }),
    );
  });

  it("is straight where it can be", () => {
    expect(routeWire({ at: [0, 0], exit: "right" }, { at: [9, 0], exit: "left" }, [], [])).toEqual([
      [0, 0],
      [9, 0],
    ]);
  });

  it("has one corner where the exits allow it", () => {
    expect(routeWire({ at: [0, 0], exit: "right" }, { at: [6, 3], exit: "up" }, [], [])).toEqual([
      [0, 0],
      [6, 0],
      [6, 3],
    ]);
  });

  it("goes round a symbol in its way", () => {
    const inTheWay: Box = { left: 4, top: -2, right: 6, bottom: 2 };
    const route = routeWire({ at: [0, 0], exit: "right" }, { at: [10, 0], exit: "left" }, [], [inTheWay]);
    expect(route.some((corner, i) => i > 0 && segmentEnters(route[i - 1]!, corner, inTheWay))).toBe(false);
  });

  it("goes round its own symbol when it faces the wrong way", () => {
    const own: Box = { left: 0, top: -1, right: 4, bottom: 1 };
    const route = routeWire({ at: [0, 0], exit: "left" }, { at: [12, 0], exit: "left" }, [], [own]);
    expect(route.some((corner, i) => i > 0 && segmentEnters(route[i - 1]!, corner, own))).toBe(false);
  });

  it("gives wires side by side a lane each", () => {
    const upright = [0, 1, 2, 3].map((y) => {
      const route = routeWire({ at: [0, y], exit: "right" }, { at: [20, y + 8], exit: "left" }, [], []);
      return route[1]![0];
    });
    expect(new Set(upright).size).toBe(4);
  });
});

function leaves(at: Point, next: Point, exit: RouteEnd["exit"]): boolean {
  if (exit === "any") return true;
  const [dx, dy] = stepOf(exit);
  return Math.sign(next[0] - at[0]) === dx && Math.sign(next[1] - at[1]) === dy;
}

function isOn([x, y]: Point, a: Point, b: Point): boolean {
  const between = (value: number, p: number, q: number) => value >= Math.min(p, q) && value <= Math.max(p, q);
  return between(x, a[0], b[0]) && between(y, a[1], b[1]) && (a[0] === b[0] || a[1] === b[1]);
}
