import type { Wire } from "../document/index.ts";
import { boxesOverlap, type Box, type Point, segmentEnters } from "../geometry/index.ts";
import { formatNumber, formatWireSize } from "../units/index.ts";
import { extentOf } from "./extent-of.ts";
import type { Lettering } from "./types.ts";

const SIZE = 0.55;
/** From the wire to the middle of its lettering. Grid steps. */
const OFFSET = 0.58;

/** What already stands near a wire's route. */
export interface Surroundings {
  /** By symbols and their lettering. */
  readonly taken: readonly Box[];
  readonly otherRoutes: readonly (readonly Point[])[];
}

/**
 * A wire's particulars ("L1 RD 14 AWG 0.15 m") along its longest run that has room for them; the label alone where only that
 * fits; nothing over a symbol or another wire. Nothing at all when not even the label has room.
 */
export function wireLettering(wire: Wire, route: readonly Point[], near: Surroundings): Lettering[] {
  const runs = runsOf(route);
  const full = particularsOf(wire);
  const label = wire.label ?? wire.id;
  for (const text of full === label ? [label] : [full, label]) {
    for (const run of runs) {
      for (const spot of spotsAlong(run, text)) if (isClear(extentOf(spot), near)) return [spot];
    }
  }
  return [];
}

/** Label or id, colour, size and length, as far as they are known. */
function particularsOf({ id, label, colour, size, metres }: Wire): string {
  const length = metres === undefined ? undefined : `${formatNumber(metres)} m`;
  return [label ?? id, colour, size === undefined ? undefined : formatWireSize(size), length]
    .filter((piece) => piece !== undefined && piece !== "")
    .join(" ");
}

interface Run {
  readonly from: Point;
  readonly to: Point;
  readonly length: number;
}

function runsOf(route: readonly Point[]): Run[] {
  const runs = route.slice(1).map((to, i) => {
    const from = route[i]!;
    return { from, to, length: Math.abs(to[0] - from[0]) + Math.abs(to[1] - from[1]) };
  });
  return runs.sort((a, b) => b.length - a.length);
}

/** Places for a text on a run it fits on: over the line, under it, in the middle and towards either end. */
function* spotsAlong({ from, to, length }: Run, text: string): Generator<Lettering> {
  const slack = length - text.length * SIZE * 0.58 - 0.3;
  if (slack < 0) return;
  const upright = from[0] === to[0];
  const lettering = { text, anchor: "middle" as const, size: SIZE, upright, role: "wire" as const };
  for (const shift of [0, -slack / 2, slack / 2]) {
    const along = upright ? (from[1] + to[1]) / 2 + shift : (from[0] + to[0]) / 2 + shift;
    for (const off of [-OFFSET, OFFSET]) {
      yield { ...lettering, at: upright ? [from[0] + off, along] : [along, from[1] + off] };
    }
  }
}

function isClear(extent: Box, near: Surroundings): boolean {
  if (near.taken.some((box) => boxesOverlap(box, extent))) return false;
  return !near.otherRoutes.some((route) =>
    route.some((point, i) => i > 0 && segmentEnters(route[i - 1]!, point, extent)),
  );
}
