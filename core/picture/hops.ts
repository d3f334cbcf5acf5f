import { crossingOf, type Point } from "../geometry/index.ts";

/** Where a wire's level runs cross the upright runs of others: there it steps over. Sorted along the wire. */
export function hopsOver(route: readonly Point[], others: readonly (readonly Point[])[]): Point[] {
  const hops: Point[] = [];
  for (let i = 1; i < route.length; i++) {
    const [a, b] = [route[i - 1]!, route[i]!];
    if (a[1] !== b[1]) continue;
    const onRun = new Map<number, Point>();
    for (const other of others) {
      for (let k = 1; k < other.length; k++) {
        const crossing = crossingOf(a, b, other[k - 1]!, other[k]!);
        if (crossing !== null) onRun.set(crossing[0], crossing);
      }
    }
    const direction = Math.sign(b[0] - a[0]);
    hops.push(...[...onRun.values()].sort((p, q) => direction * (p[0] - q[0])));
  }
  return hops;
}
