import type { Guard, Hot } from "../positions/index.ts";
import type { SituationReading } from "../readings/index.ts";
import type { Study } from "../rules/index.ts";

/** What a finger, or a frame that rubs through, would find at one piece of metal. */
export interface Touch {
  /** Terminal address or wire id. */
  readonly at: string;
  readonly hot: Hot;
  readonly via: "direct" | "load" | null;
  readonly when: string;
  /** In the situation looked at; `null`: on no network, or unsettled. */
  readonly volts: number | null;
  /** Metal that can be touched; a wire is insulated. */
  readonly bare: boolean;
  /** Amps if it touches the frame, worst combination; `null`: never hot by a direct way. */
  readonly faultA: number | null;
  /** `undefined`: nothing drives it. `null`: nothing stops the current. */
  readonly guard: Guard | null | undefined;
  readonly clearsWithinS: number | null;
  /** The thinnest wire the fault current runs through stands it until the guard opens; `null`: can't be told. */
  readonly survives: boolean | null;
}

/** The touch test at a terminal or a wire; `null` when the drawing has no such place. A wire is taken at its end that is hot more often. */
export function touchTest(study: Study, situation: SituationReading, at: string): Touch | null {
  const { netlist, standing } = study;
  const terminal = netlist.terminalAt.get(at);
  if (terminal) {
    const { hot, via, when, bare, faultA, guard, clearsWithinS } = standing.terminals[terminal.index]!;
    const volts = voltsAt(situation, terminal.node);
    return {
      at,
      hot,
      via,
      when,
      volts,
      bare,
      faultA,
      guard,
      clearsWithinS,
      survives: survivalOf(study, terminal.wires, guard),
    };
  }
  const wire = netlist.wireAt.get(at);
  if (!wire) return null;
  const end = standing.terminals[wire.from.index]!;
  const { faultA, guard, clearsWithinS } = standing.wires[wire.index]!;
  const { hot, via, when } = end;
  const volts = voltsAt(situation, wire.from.node);
  return {
    at,
    hot,
    via,
    when,
    volts,
    bare: false,
    faultA,
    guard,
    clearsWithinS,
    survives: survivalOf(study, [wire.index], guard),
  };
}

function voltsAt({ solution, settled }: SituationReading, node: number): number | null {
  return settled ? voltsToZero(solution, node) : null;
}

function voltsToZero(solution: SituationReading["solution"], node: number): number | null {
  return solution.known[node] === 1 ? solution.nodeV[node]! : null;
}

/** No guard: it does not survive. Else every wire that feeds the place must stand the heat; one that can't be told leaves it open. */
function survivalOf({ standing }: Study, wires: readonly number[], guard: Guard | null | undefined): boolean | null {
  if (guard === undefined) return null;
  if (guard === null) return false;
  const ratios = wires.map((wire) => standing.wires[wire]!.heatRatio);
  if (ratios.some((ratio) => ratio !== null && ratio > 1)) return false;
  return ratios.length === 0 || ratios.includes(null) ? null : true;
}
