import type { Edit, GridPoint, Wire } from "../../../core/document/index.ts";
import { nearestOnRoute, type Point, routeLength } from "../../../core/geometry/index.ts";

/** Where a wire is cut: a spot on its route, and the terminals the two pieces end on there. */
export interface Cut {
  readonly at: Point;
  /** Where the second piece goes on, when something longer than a spot is put in; else `at`. */
  readonly until?: Point;
  /** Terminal the first piece ends on, and the one the second starts from. */
  readonly firstTo: string;
  readonly secondFrom: string;
}

/**
 * The edits that make two wires of one. Both keep its settings; its length is shared out as the drawing shows it (unknown stays
 * unknown); a label goes on as "L1a" and "L1b"; each piece keeps the fitting of its own outer end.
 */
export function divideWire(
  wire: Wire,
  route: readonly Point[],
  cut: Cut,
  ids: readonly [first: string, second: string],
): Edit[] {
  const { ends, via, metres, label, ...kept } = wire;
  const lengthsM = metres === undefined ? null : dividedM(metres, shareBefore(route, cut.at, cut.until ?? cut.at));
  const [viaBefore, viaAfter] = dividedVia(via ?? [], route, cut);
  const piece = (id: string, from: string, to: string, part: "first" | "second"): Wire => {
    const isFirst = part === "first";
    const corners = isFirst ? viaBefore : viaAfter;
    const fitting = isFirst ? ends?.from : ends?.to;
    return {
      ...kept,
      id,
      from,
      to,
      ...(label !== undefined && { label: `${label}${isFirst ? "a" : "b"}` }),
      ...(lengthsM !== null && { metres: lengthsM[isFirst ? 0 : 1] }),
      ...(corners.length > 0 && { via: corners }),
      ...(fitting !== undefined && { ends: isFirst ? { from: fitting } : { to: fitting } }),
    };
  };
  return [
    { op: "remove-wire", id: wire.id },
    { op: "add-wire", wire: piece(ids[0], wire.from, cut.firstTo, "first") },
    { op: "add-wire", wire: piece(ids[1], cut.secondFrom, wire.to, "second") },
  ];
}

/** Which part of a route's length lies before a cut, what the cut takes out left aside. Between 0 and 1. */
function shareBefore(route: readonly Point[], at: Point, until: Point): number {
  const before = lengthUpTo(route, at);
  const after = routeLength(route) - lengthUpTo(route, until);
  return before + after === 0 ? 0.5 : before / (before + after);
}

function lengthUpTo(route: readonly Point[], spot: Point): number {
  const hit = nearestOnRoute(spot, route);
  return hit === null ? 0 : routeLength([...route.slice(0, hit.segment + 1), hit.at]);
}

function dividedVia(via: readonly GridPoint[], route: readonly Point[], cut: Cut): [GridPoint[], GridPoint[]] {
  const [end, begin] = [lengthUpTo(route, cut.at), lengthUpTo(route, cut.until ?? cut.at)];
  const along = via.map((corner) => lengthUpTo(route, corner));
  return [via.filter((_, i) => along[i]! < end), via.filter((_, i) => along[i]! > begin)];
}

/** To the centimetre, for nobody cuts finer, and together as long as before. */
function dividedM(lengthM: number, share: number): [number, number] {
  const firstM = Math.round(lengthM * share * 100) / 100;
  return [firstM, Math.round((lengthM - firstM) * 1e6) / 1e6];
}
