import type { Branch } from "../circuit/index.ts";
import type { Element, Load } from "../parts/index.ts";

interface Ends {
  readonly a: number;
  readonly b: number;
  readonly outA: number;
  readonly outB: number;
}

/** The nodes an element stands between, first and second end as the element names them. */
export function endsOf(spec: Element, nodeOf: (name: string) => number): Ends {
  const two = (a: string, b: string): Ends => ({ a: nodeOf(a), b: nodeOf(b), outA: -1, outB: -1 });
  switch (spec.type) {
    case "bar":
      return two(spec.terminals[0] ?? "$bar", spec.terminals[0] ?? "$bar");
    case "source":
      return two(spec.plus, spec.minus);
    case "diode":
      return two(spec.a, spec.k);
    case "converter":
      return { ...two(spec.inPlus, spec.inMinus), outA: nodeOf(spec.outPlus), outB: nodeOf(spec.outMinus) };
    default:
      return two(spec.a, spec.b);
  }
}

/** What the solver gets for an element, or null where nothing conducts: a bar (one node), a pulled fuse. */
export function branchOf(spec: Element, { a, b, outA, outB }: Ends): Branch | null {
  switch (spec.type) {
    case "bar":
      return null;
    case "link":
    case "coil":
      return { type: "resistor", a, b, ohm: spec.ohm };
    case "source":
      return { type: "source", a, b, volts: spec.restV, ohm: spec.ohm };
    case "protection":
      return spec.closed ? { type: "resistor", a, b, ohm: spec.ohm } : null;
    case "contact":
      return { type: "contact", a, b, ohm: spec.ohm };
    case "diode":
      return { type: "diode", a, b, forwardV: spec.forwardV, ohm: spec.ohm };
    case "converter":
      return { type: "converter", a, b, outA, outB, volts: spec.outV, efficiency: spec.efficiency };
    case "load":
      return loadBranch(spec, a, b);
  }
}

/** A load whose draw nobody stated draws nothing, but still joins what is on its two sides. */
function loadBranch(load: Load, a: number, b: number): Branch {
  const idle: Branch = { type: "current", a, b, amps: 0, eitherWay: true };
  const eitherWay = !load.polarised || load.conductsReversed;
  const { draw } = load;
  switch (draw.law) {
    case "resistor":
      return draw.ohm === null ? idle : { type: "resistor", a, b, ohm: draw.ohm };
    case "filament":
      return draw.watts === null ? idle : { type: "filament", a, b, watts: draw.watts, ratedV: draw.ratedV };
    case "current":
      return draw.amps === null ? idle : { type: "current", a, b, amps: draw.amps, eitherWay };
    case "power":
      if (draw.watts === null) return idle;
      return {
        type: "power",
        a,
        b,
        watts: draw.watts,
        minV: draw.opens?.minV ?? null,
        maxV: draw.opens?.maxV ?? null,
        eitherWay,
      };
  }
}
