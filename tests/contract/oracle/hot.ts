import type { Element } from "./element.ts";
import { combinationsOf, groups, isOn, type Drawing, type Setting } from "./drawing.ts";
import { isClosed, operatingPoint, type Point } from "./operating-point.ts";

export interface Heat {
  readonly hot: "always" | "at-rest" | "switched" | "never";
  readonly via: "direct" | "load" | null;
}

/** One combination with what it was solved to. */
export interface Stand {
  readonly setting: Setting;
  readonly point: Point;
}

/** More combinations than this take this plain method too long. */
const MOST_COMBINATIONS = 600;

/** Every combination solved; `null` where there are too many, or the method is unsure of one. */
export function standsOf(drawing: Drawing): Stand[] | null {
  const combinations = combinationsOf(drawing);
  if (combinations.length > MOST_COMBINATIONS) return null;
  const stands = combinations.map((setting) => ({ setting, point: operatingPoint(drawing, setting) }));
  return stands.some(({ point }) => point.unsure) ? null : stands;
}

/** By terminal, following "Hot" word by word: combination by combination, way by way. */
export function heatOf(drawing: Drawing, stands: readonly Stand[]): Map<string, Heat> {
  const settled = stands.filter(({ point }) => point.settled);
  const each = settled.map((stand) => heatIn(drawing, stand));
  const rest = stands[0]!.point.settled ? each[0] : undefined;
  return new Map(
    drawing.terminals.map((terminal): [string, Heat] => {
      const ways = each.map((heat) => heat.get(terminal) ?? null);
      const via = ways.includes("direct") ? "direct" : ways.includes("load") ? "load" : null;
      if (via === null) return [terminal, { hot: "never", via }];
      if (!ways.includes(null)) return [terminal, { hot: "always", via }];
      return [terminal, { hot: rest?.get(terminal) ? "at-rest" : "switched", via }];
    }),
  );
}

/** Elements that conduct without limit in a combination, with the direction of a diode. */
function conductors(drawing: Drawing, { setting, point }: Stand): { a: string; b: string; oneWay: boolean }[] {
  const open = (element: Element): boolean => {
    if (element.type === "contact") return !isClosed(element, setting, point.pulledIn);
    if (element.type === "fuse") return !element.closed;
    if (element.type === "diode") return element.suppresses;
    return element.type !== "conductor";
  };
  return [...drawing.wires, ...drawing.elements]
    .filter((element) => !open(element))
    .map(({ a, b, type }) => ({ a, b, oneWay: type === "diode" }));
}

function heatIn(drawing: Drawing, stand: Stand): Map<string, "direct" | "load"> {
  const ways = conductors(drawing, stand);
  const forward = reach(positives(drawing, stand), ways);
  const back = ways.map(({ a, b, oneWay }) => ({ a: b, b: a, oneWay }));
  const negative = reach(negatives(drawing), back);
  // A converter's input is a constant power, and so a load among loads.
  const loads = drawing.elements.flatMap(({ type, a, b }) =>
    type === "load" || type === "converter" ? [{ a, b, oneWay: false }] : [],
  );
  // A way that passes a source's negative leads nowhere: what is joined to one takes nothing in and passes nothing on.
  const through = reach(
    [...forward].filter((node) => !negative.has(node)),
    [...ways, ...loads],
    negative,
  );
  return new Map(
    [...forward, ...through].map((node) => [node, forward.has(node) ? ("direct" as const) : ("load" as const)]),
  );
}

/** Some source's two ends are joined without anything that limits the current. */
export function isShorted(drawing: Drawing, stand: Stand): boolean {
  const joined = groups(conductors(drawing, stand).map(({ a, b }): [string, string] => [a, b]));
  return drawing.elements.some((element) => {
    if (element.type === "source") return joined(element.a) === joined(element.b);
    return element.type === "converter" && joined(element.outA) === joined(element.outB);
  });
}

/** Some source's negative meets the others' only through loads or not at all: a frame of its own. */
export function hasLooseFrame(drawing: Drawing, stand: Stand): boolean {
  const joined = groups(conductors(drawing, stand).map(({ a, b }): [string, string] => [a, b]));
  const negatives = drawing.elements.flatMap((element) => (element.type === "source" ? [joined(element.b)] : []));
  return new Set(negatives).size > 1;
}

function positives(drawing: Drawing, { setting, point }: Stand): string[] {
  return drawing.elements.flatMap((element, at) => {
    if (element.type === "source" && isOn(element, setting)) return [element.a];
    return element.type === "converter" && point.active.has(at) ? [element.outA] : [];
  });
}

/** Sources' negatives; where batteries are in series the one's negative is the other's positive: that is hot, and no return. */
function negatives(drawing: Drawing): string[] {
  const fixed = drawing.elements.filter(
    ({ type, ...element }) => type === "conductor" || ("closed" in element && element.closed),
  );
  const joined = groups([...drawing.wires, ...fixed].map(({ a, b }): [string, string] => [a, b]));
  const ends = drawing.elements.flatMap((element) => {
    if (element.type === "source") return [{ plus: element.a, minus: element.b }];
    return element.type === "converter" ? [{ plus: element.outA, minus: element.outB }] : [];
  });
  const hot = new Set(ends.map(({ plus }) => joined(plus)));
  return ends.map(({ minus }) => minus).filter((minus) => !hot.has(joined(minus)));
}

/** Everything ways lead to from some nodes. */
function reach(
  starts: readonly string[],
  ways: readonly { a: string; b: string; oneWay: boolean }[],
  barred: ReadonlySet<string> = new Set(),
): Set<string> {
  const found = new Set(starts);
  for (const node of found) {
    for (const { a, b, oneWay } of ways) {
      if (a === node && !barred.has(b)) found.add(b);
      if (b === node && !oneWay && !barred.has(a)) found.add(a);
    }
  }
  return found;
}
