import type { Solution } from "../circuit/index.ts";
import type { NetElement, NetPart } from "../netlist/index.ts";
import type { Load } from "../parts/index.ts";
import type { PartReading, WayReading } from "./types.ts";

/** Volts between two nodes; `null` unless both are on one network that has a zero. */
export function voltsBetween(solution: Solution, a: number, b: number): number | null {
  const known = solution.known[a] === 1 && solution.known[b] === 1 && solution.network[a] === solution.network[b];
  return known ? solution.nodeV[a]! - solution.nodeV[b]! : null;
}

/** Amps through an element, first end to second; a source's while it delivers; 0 where nothing is fitted. */
export function ampsThrough(solution: Solution, element: NetElement): number {
  return element.branch < 0 ? 0 : solution.branchA[element.branch]!;
}

/**
 * What a part does, from what it is made of. A part with one device, contact or diode reads it as its own amps; with several,
 * each stands under `ways` by the terminal at its far end.
 */
export function readPart(part: NetPart, solution: Solution, feedV: Float64Array): PartReading {
  const reading: PartReading = Object.assign(
    {},
    ...part.elements.map((element) => readElement(element, solution, feedV)),
  );
  const ways = part.elements.filter(({ spec }) => spec.type === "protection" || spec.type === "contact");
  const single = ways.length === 1 && !part.elements.some(({ spec }) => spec.type === "coil");
  if (single) return { ...reading, ...readWay(ways[0]!, solution) };
  if (ways.length === 0) return reading;
  return { ...reading, ways: Object.fromEntries(ways.map((way) => [wayName(way), readWay(way, solution)])) };
}

function wayName({ spec }: NetElement): string {
  if (spec.type === "protection") return spec.terminal || spec.b;
  return spec.type === "contact" ? spec.b : "";
}

function readWay(element: NetElement, solution: Solution): WayReading {
  const amps = ampsThrough(solution, element);
  const { spec } = element;
  if (spec.type === "protection") {
    return { amps, loadPercent: spec.ratingA === null ? null : (Math.abs(amps) / spec.ratingA) * 100 };
  }
  return { amps, closed: element.branch >= 0 && solution.active[element.branch] === 1 };
}

function readElement(element: NetElement, solution: Solution, feedV: Float64Array): PartReading {
  const { spec } = element;
  const amps = ampsThrough(solution, element);
  const volts = voltsBetween(solution, element.a, element.b);
  switch (spec.type) {
    case "source":
      return { amps, volts };
    case "coil":
      return {
        pulledIn: solution.pulledIn[element.relay] === 1,
        coilV: volts === null ? 0 : Math.abs(volts),
        coilAmps: amps,
      };
    case "diode":
      return spec.suppresses === undefined ? { amps, volts } : {};
    case "converter":
      return {
        amps,
        volts,
        on: solution.active[element.branch] === 1,
        outAmps: solution.outputA[element.branch]!,
        outVolts: voltsBetween(solution, element.outA, element.outB),
      };
    case "load":
      return spec.role === "existing" ? {} : readLoad(spec, element, amps, volts, solution, feedV);
    case "link":
      return spec.bond === undefined ? { amps } : {};
    default:
      return {};
  }
}

/** Less than this is leakage. Amps. */
const NO_CURRENT_A = 1e-6;

function readLoad(
  load: Load,
  element: NetElement,
  amps: number,
  volts: number | null,
  solution: Solution,
  feedV: Float64Array,
): PartReading {
  const watts = volts === null ? 0 : Math.abs(volts * amps);
  const basic = { amps, volts, watts };
  if (load.role === "resistance") return element.part.elements.some(({ spec }) => spec.type === "coil") ? {} : basic;
  const sourceV = sourceVolts(element, volts, feedV);
  // A load behind an open switch has the whole source lost on its way; that says nothing of its wires.
  const isIdle = Math.abs(amps) < NO_CURRENT_A;
  const lossV = volts === null || sourceV === 0 || isIdle ? null : sourceV - Math.abs(volts);
  return {
    ...basic,
    on: isOn(load, amps, volts, solution.active[element.branch] === 1),
    lossV,
    lossPercent: lossV === null ? null : (lossV / sourceV) * 100,
  };
}

/** Open-circuit volts of the highest source that feeds a load: by the end of it that stands higher, because a ground may serve several. */
export function sourceVolts({ a, b }: NetElement, volts: number | null, feedV: Float64Array): number {
  return (volts ?? 0) < 0 ? feedV[b]! : feedV[a]!;
}

/** Whether a load works, as its kind tells it: while it draws, from a share of its rated volts, over a share of its stated amps. */
export function isOn(load: Load, amps: number, volts: number | null, drawing: boolean): boolean {
  if ("drawing" in load.onWhen) return drawing && amps !== 0;
  if ("voltsFraction" in load.onWhen)
    return volts !== null && Math.abs(volts) >= load.onWhen.voltsFraction * load.ratedV;
  return load.statedA !== null && Math.abs(amps) > load.onWhen.ampsFraction * load.statedA;
}
