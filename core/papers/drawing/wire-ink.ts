import type { Point } from "../../geometry/index.ts";
import type { Hot } from "../../positions/index.ts";
import { inkPath, mm, type LineStyle } from "../layout/index.ts";

/** How a wire is drawn by when it is hot; told apart by weight and break, never by colour. */
export type WireLook = Hot | "unknown";

const HOP_MM = 1.1;

const LOOKS: Readonly<Record<WireLook, readonly LineStyle[]>> = {
  always: [{ widthMm: 1.1 }],
  "at-rest": [{ widthMm: 1.1 }, { widthMm: 0.5, dash: [1.4, 1.4], white: true }],
  switched: [{ widthMm: 0.45 }],
  never: [{ widthMm: 0.35, dash: [2.6, 1] }],
  unknown: [{ widthMm: 0.35, dash: [0.5, 1] }],
};

/** A wire's route in millimetres, with a bow wherever it steps over another wire. */
export function wireInk(route: readonly Point[], hops: readonly Point[], look: WireLook): string[] {
  if (route.length < 2) return [];
  const d = routePath(route, hops);
  return LOOKS[look].map((style) => inkPath(d, style));
}

function routePath(route: readonly Point[], hops: readonly Point[]): string {
  let d = `M${mm(route[0]![0])} ${mm(route[0]![1])}`;
  for (let at = 1; at < route.length; at++) {
    const [from, to] = [route[at - 1]!, route[at]!];
    for (const hop of hopsOn(from, to, hops)) d += bow(from, to, hop);
    d += `L${mm(to[0])} ${mm(to[1])}`;
  }
  return d;
}

function hopsOn(from: Point, to: Point, hops: readonly Point[]): Point[] {
  const along = ([x, y]: Point) => Math.abs(x - from[0]) + Math.abs(y - from[1]);
  const length = along(to);
  const isOn = ([x, y]: Point) =>
    Math.abs((to[0] - from[0]) * (y - from[1]) - (to[1] - from[1]) * (x - from[0])) < 1e-6 * Math.max(1, length);
  const isInside = (hop: Point) => along(hop) > HOP_MM && along(hop) < length - HOP_MM;
  return hops
    .filter((hop) => isOn(hop) && isInside(hop) && isTowards(from, to, hop))
    .sort((a, b) => along(a) - along(b));
}

function isTowards(from: Point, to: Point, hop: Point): boolean {
  return (hop[0] - from[0]) * (to[0] - from[0]) + (hop[1] - from[1]) * (to[1] - from[1]) > 0;
}

/** Half a circle over the crossing: upwards on a level wire, to the right on an upright one. */
function bow(from: Point, to: Point, [x, y]: Point): string {
  const radius = mm(HOP_MM);
  if (from[1] === to[1]) {
    const step = to[0] > from[0] ? HOP_MM : -HOP_MM;
    return `L${mm(x - step)} ${mm(y)}A${radius} ${radius} 0 0 ${step > 0 ? 1 : 0} ${mm(x + step)} ${mm(y)}`;
  }
  const step = to[1] > from[1] ? HOP_MM : -HOP_MM;
  return `L${mm(x)} ${mm(y - step)}A${radius} ${radius} 0 0 ${step > 0 ? 1 : 0} ${mm(x)} ${mm(y + step)}`;
}
