import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { planElimination } from "../../core/solver/ordering.ts";

/** The neighbours each position has at its going, found by eliminating on sets, the plain way. */
function shapeByHand(count: number, ends: Int32Array): number[][] {
  const joined = Array.from({ length: count }, () => new Set<number>());
  for (let i = 0; i < ends.length; i += 2) {
    joined[ends[i]!]!.add(ends[i + 1]!);
    joined[ends[i + 1]!]!.add(ends[i]!);
  }
  return joined.map((neighbours, k) => {
    const later = [...neighbours].filter((other) => other > k).sort((a, b) => a - b);
    for (const a of later) for (const b of later) if (a !== b) joined[a]!.add(b);
    return later;
  });
}

const graphs = fc.integer({ min: 1, max: 60 }).chain((count) =>
  fc.record({
    count: fc.constant(count),
    // Mostly a tree, as circuits are, with ties thrown in, hubs, and edges side by side.
    parents: fc.array(fc.nat(), { minLength: count, maxLength: count }),
    hub: fc.nat(count - 1),
    extra: fc.array(fc.tuple(fc.nat(count - 1), fc.nat(count - 1)), { maxLength: count }),
    last: fc.uniqueArray(fc.nat(count - 1), { maxLength: 3 }),
    late: fc.array(fc.nat(count - 1), { maxLength: 8 }),
  }),
);

describe("the elimination plan", () => {
  it("has for each position just the neighbours plain elimination in that order gives it", () => {
    fc.assert(
      fc.property(graphs, ({ count, parents, hub, extra, last, late }) => {
        const pairs = parents.map((parent, v) => [v, v % 3 === 0 ? hub : parent % (v + 1)] as const).concat(extra);
        const ends = Int32Array.from(pairs.filter(([a, b]) => a !== b).flat());
        const isLate = Uint8Array.from({ length: count }, (_, v) => (late.includes(v) ? 1 : 0));
        const plan = planElimination(count, ends, last, isLate);
        const moved = ends.map((v) => plan.positionOf[v]!);
        const got = Array.from({ length: count }, (_, k) => [
          ...plan.slotTo.subarray(plan.slotStart[k], plan.slotStart[k + 1]),
        ]);
        expect(new Set(plan.positionOf).size).toBe(count);
        expect(got).toEqual(shapeByHand(count, moved));
      }),
      { numRuns: 150 },
    );
  });

  it("ends every connected part that holds vertices kept for last in the one named last", () => {
    const ends = Int32Array.from([0, 1, 1, 2, 2, 3, 4, 5]);
    const plan = planElimination(6, ends, [1, 0]);
    const root = (v: number): number => {
      let k = plan.positionOf[v]!;
      while (plan.slotStart[k]! < plan.slotStart[k + 1]!) k = plan.slotTo[plan.slotStart[k]!]!;
      return k;
    };
    expect(root(3)).toBe(plan.positionOf[0]);
    expect(root(1)).toBe(plan.positionOf[0]);
  });

  it("leaves a tree with one neighbour each, whatever the numbering", () => {
    const ends: number[] = [];
    for (let v = 1; v < 500; v++) ends.push(v, Math.floor(v / 3));
    const plan = planElimination(500, Int32Array.from(ends), [0]);
    expect(plan.slotTo).toHaveLength(499);
    expect(plan.targets).toHaveLength(0);
  });
});
