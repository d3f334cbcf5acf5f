import type { State } from "../circuit/index.ts";
import type { Combination, NetElement, Netlist } from "./types.ts";

/** Everything at rest. */
export function restCombination(netlist: Netlist): Combination {
  return new Uint8Array(netlist.controls.length);
}

/**
 * Controls set by name, the others at rest: {"engine": "running", "s1": "on"}. Names and positions nobody knows throw RangeError:
 * files are checked on opening, so this is the caller's bug.
 */
export function combinationOf(netlist: Netlist, set: Readonly<Record<string, string>>): Combination {
  const combination = restCombination(netlist);
  for (const [id, position] of Object.entries(set)) {
    const control = netlist.controls.findIndex((one) => one.id === id);
    const at = netlist.controls[control]?.positions.indexOf(position) ?? -1;
    if (at < 0)
      throw new RangeError(`combinationOf: got "${id}" at "${position}"; no control of the drawing has that position`);
    combination[control] = at;
  }
  return combination;
}

/** The engine runs, so that every battery and feed stands at its running volts. */
export function engineRuns(combination: Combination): boolean {
  return combination[0] === 1;
}

/** Whether a contact moved by a control is closed, or a source with a control is on, in this combination. */
export function isClosed(netlist: Netlist, element: NetElement, combination: Combination): boolean {
  const positions = controlPositions(element);
  if (!positions) return true;
  const control = controlNumber(netlist, element);
  return positions.includes(netlist.controls[control]!.positions[combination[control]!]!);
}

/** Positions of its part's control in which this element conducts; null when no control moves it. */
export function controlPositions({ spec }: NetElement): readonly string[] | null {
  if (spec.type === "source") return spec.when;
  return spec.type === "contact" && "positions" in spec.movedBy ? spec.movedBy.positions : null;
}

const numbers = new WeakMap<Netlist, ReadonlyMap<string, number>>();

/** Number of the control that moves this element. RangeError when its part has none: a kind's mistake. */
export function controlNumber(netlist: Netlist, element: NetElement): number {
  let byId = numbers.get(netlist);
  if (!byId) {
    byId = new Map(netlist.controls.map((control, index) => [control.id, index]));
    numbers.set(netlist, byId);
  }
  const id = element.part.part.id;
  const control = byId.get(id);
  if (control === undefined)
    throw new RangeError(`controlNumber: part "${id}" moves a contact but declares no control`);
  return control;
}

/** The solver's state for a combination. `allSourcesAtRestV`: as for fault currents, whatever the engine does. */
export function stateOf(netlist: Netlist, combination: Combination, allSourcesAtRestV = false): State {
  const { branches } = netlist.circuit;
  const closed = new Uint8Array(branches.length);
  const sourceV = new Float64Array(branches.length);
  const running = !allSourcesAtRestV && engineRuns(combination);
  for (const element of netlist.elements) {
    if (element.branch < 0) continue;
    if (element.spec.type === "source") sourceV[element.branch] = running ? element.spec.runningV : element.spec.restV;
    if (element.spec.type === "source" || (element.spec.type === "contact" && element.coil < 0)) {
      closed[element.branch] = isClosed(netlist, element, combination) ? 1 : 0;
    }
  }
  return { closed, sourceV };
}
