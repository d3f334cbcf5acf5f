import type { Point } from "../../geometry/index.ts";

export type Run = readonly [Point, Point];

/** Shorter stretches carry no lettering. Millimetres. */
const LEAST_RUN_MM = 1;

/**
 * The straight runs of each route that no other route lies on, longest first, so that lettering there can mean one wire only;
 * a route that is shared all along gives all its runs.
 */
export function ownRuns(routes: readonly (readonly Point[])[]): Run[][] {
  const spans = new Map<string, { readonly route: number; readonly from: number; readonly to: number }[]>();
  const runs = routes.map((route) => route.slice(1).map((to, at): Run => [route[at]!, to]));
  for (const [route, own] of runs.entries()) {
    for (const run of own) {
      const { key, from, to } = spanOf(run);
      spans.set(key, [...(spans.get(key) ?? []), { route, from, to }]);
    }
  }
  return runs.map((own, route) => {
    const free = own.flatMap((run) => {
      const others = spans.get(spanOf(run).key)!.filter((span) => span.route !== route);
      return others.reduce<Run[]>(
        (pieces, other) => pieces.flatMap((piece) => without(piece, other.from, other.to)),
        [run],
      );
    });
    return longestFirst(free.some((run) => lengthOf(run) > LEAST_RUN_MM) ? free : own);
  });
}

function longestFirst(runs: readonly Run[]): Run[] {
  return runs.filter((run) => lengthOf(run) > LEAST_RUN_MM).sort((a, b) => lengthOf(b) - lengthOf(a));
}

function lengthOf([a, b]: Run): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}

/** The line a level or upright run lies on, and its stretch of it. */
function spanOf([a, b]: Run): { readonly key: string; readonly from: number; readonly to: number } {
  const along = a[1] === b[1] ? 0 : 1;
  const key = `${along} ${a[1 - along]!.toFixed(3)}`;
  return { key, from: Math.min(a[along], b[along]), to: Math.max(a[along], b[along]) };
}

/** What is left of a run when the stretch from `from` to `to` is taken out of it. */
function without(run: Run, from: number, to: number): Run[] {
  const along = run[0][1] === run[1][1] ? 0 : 1;
  const span = spanOf(run);
  if (to <= span.from || from >= span.to) return [run];
  const piece = (low: number, high: number): Run[] => {
    const at = (value: number): Point => (along === 0 ? [value, run[0][1]] : [run[0][0], value]);
    return high > low ? [[at(low), at(high)]] : [];
  };
  return [...piece(span.from, Math.max(span.from, from)), ...piece(Math.min(span.to, to), span.to)];
}
