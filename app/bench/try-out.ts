import type { Document, Part } from "../../core/document/index.ts";
import { buildNetlist, combinationOf, type NetElement } from "../../core/netlist/index.ts";
import { ampsThrough, isOn, readSituation, voltsBetween, type SituationReading } from "../../core/readings/index.ts";
import { formatNumber, formatQuantity } from "../../core/units/index.ts";
import { elementTitle } from "./behaviour.ts";
import { ownKind } from "./own-kind.ts";
import { partOf, type BenchSymbol } from "./symbol.ts";

/** What a lead of the tester is on: the battery's plus, its minus, or nothing. */
export type Lead = "plus" | "minus" | "open";

export interface TryOutQuestion {
  /** By terminal name; not named: open. */
  readonly leads: Readonly<Record<string, Lead>>;
  /** Of the symbol's own control; `null`: at rest, or it has none. */
  readonly position: string | null;
  readonly nominalV: 12 | 24;
}

export interface TryOutAnswer {
  /** False: no answer, as plus meets minus without any resistance, or a contact never comes to rest. */
  readonly settled: boolean;
  /** By terminal name. `volts` against the tester's minus, `null`: joined to nothing; `amps` into the symbol. */
  readonly terminals: Readonly<Record<string, { readonly volts: number | null; readonly amps: number }>>;
  /** What each element inside does, a sentence each. */
  readonly inside: readonly { readonly text: string; readonly isBad: boolean }[];
}

const PLUS = "plus";
const MINUS = "minus";
const SYMBOL = "own";
const TESTER = "tester";

/** A source with its minus on the frame, as in a vehicle. Made of plain elements, as every symbol is. */
function testerOf(nominalV: 12 | 24): Part {
  const restV = (12.6 * nominalV) / 12;
  return {
    id: TESTER,
    kind: ownKind.kind,
    at: [0, 0],
    props: {
      terminals: [
        { name: PLUS, at: [0, 0], exit: "right" },
        { name: MINUS, at: [0, 2], exit: "right" },
      ],
      elements: [
        { type: "source", plus: PLUS, minus: MINUS, restV, runningV: restV, milliohm: 5 },
        { type: "link", a: MINUS, b: "$chassis" },
      ],
    },
  };
}

/** Puts the leads on and solves it. The symbol must be one without troubles. */
export function tryOut(symbol: BenchSymbol, { leads, position, nominalV }: TryOutQuestion): TryOutAnswer {
  const on = symbol.terminals.flatMap(({ name }) => {
    const lead = leads[name] ?? "open";
    return lead === "open" ? [] : [{ name, lead }];
  });
  const document: Document = {
    format: "groundstrap",
    version: 1,
    system: { nominalV },
    parts: [testerOf(nominalV), { ...partOf(symbol, SYMBOL), at: [10, 0] }],
    wires: on.map(({ name, lead }, at) => ({ id: `lead${at}`, from: `${TESTER}.${lead}`, to: `${SYMBOL}.${name}` })),
  };
  const netlist = buildNetlist(document);
  const set = position !== null && symbol.positions.includes(position) ? { [SYMBOL]: position } : {};
  const reading = readSituation(netlist, combinationOf(netlist, set), "bench", "On the Bench");
  const ampsInto = new Map(on.map(({ name }, at) => [name, reading.wires[`lead${at}`]?.amps ?? 0]));
  return {
    settled: reading.settled,
    terminals: Object.fromEntries(
      symbol.terminals.map(({ name }) => [
        name,
        { volts: reading.terminals[`${SYMBOL}.${name}`]?.volts ?? null, amps: ampsInto.get(name) ?? 0 },
      ]),
    ),
    inside: reading.settled
      ? netlist.partAt
          .get(SYMBOL)!
          .elements.map((element, at) => says(element, elementTitle(symbol.elements[at]!), reading))
      : [],
  };
}

function says(
  element: NetElement,
  title: string,
  { solution }: SituationReading,
): { readonly text: string; readonly isBad: boolean } {
  const amps = ampsThrough(solution, element);
  const volts = voltsBetween(solution, element.a, element.b);
  const flows = `${formatQuantity(amps, "A")}`;
  const { spec } = element;
  const say = (text: string, isBad = false) => ({ text: `${title}: ${text}`, isBad });
  switch (spec.type) {
    case "protection": {
      if (!spec.closed) return say("open");
      if (spec.ratingA === null) return say(`${flows}, its rating is not said`);
      const percent = (Math.abs(amps) / spec.ratingA) * 100;
      const load = `${flows}, ${formatNumber(percent)} % of its ${formatQuantity(spec.ratingA, "A")}`;
      return percent > 100 ? say(`${load}: it blows`, true) : say(load);
    }
    case "contact":
      return say(element.branch >= 0 && solution.active[element.branch] === 1 ? `closed, ${flows}` : "open");
    case "coil":
      return say(solution.pulledIn[element.relay] === 1 ? `pulled in, ${flows}` : `at rest, ${flows}`);
    case "load": {
      if (volts === null) return say("joined to nothing");
      const doing = isOn(spec, amps, volts, solution.active[element.branch] === 1) ? "works" : "does not work";
      return say(`${doing}, ${formatQuantity(volts, "V")}, ${flows}, ${formatQuantity(Math.abs(volts * amps), "W")}`);
    }
    case "diode":
      return say(Math.abs(amps) > 1e-6 ? `conducts ${flows}` : "blocks");
    case "converter":
      return say(`takes ${flows}, gives ${formatQuantity(solution.outputA[element.branch] ?? 0, "A")}`);
    default:
      return say(flows);
  }
}
