/** Refuses circuits and states that can't be: they are the caller's mistake, so RangeError with what was got and wanted. */
import type { Branch, Circuit, State } from "../circuit/index.ts";

/** Name, value and what was wanted of the first thing found wrong. */
type Fault = readonly [what: string, got: unknown, wanted: string];

function refuse([what, got, wanted]: Fault): never {
  throw new RangeError(`solver: ${what} is ${String(got)}; wanted ${wanted}. Check where the circuit is put together.`);
}

const isAtLeast0 = (value: number): boolean => Number.isFinite(value) && value >= 0;
const isAbove0 = (value: number): boolean => Number.isFinite(value) && value > 0;

export function checkCircuit({ nodeCount, branches, relays, references }: Circuit): void {
  if (!Number.isInteger(nodeCount) || nodeCount < 0) refuse(["nodeCount", nodeCount, "a whole number, 0 or more"]);
  for (let i = 0; i < branches.length; i++) {
    const branch = branches[i]!;
    const fault = endFault(branch, nodeCount) ?? valueFault(branch);
    if (fault) refuse([`branch ${i} (${branch.type}): ${fault[0]}`, fault[1], fault[2]]);
  }
  references.forEach((node, i) => {
    if (!isNode(node, nodeCount)) refuse([`references[${i}]`, node, nodeRange(nodeCount)]);
  });
  relays.forEach(({ coil, makes, breaks, pullInV, dropOutV }, i) => {
    const what = `relays[${i}]`;
    if (branches[coil]?.type !== "resistor") refuse([`${what}.coil`, coil, "the index of a resistor branch"]);
    for (const contact of [...makes, ...breaks]) {
      if (branches[contact]?.type !== "contact") refuse([`${what}: contact`, contact, "the index of a contact branch"]);
    }
    if (!isAtLeast0(pullInV)) refuse([`${what}.pullInV`, pullInV, "0 V or more"]);
    if (!isAtLeast0(dropOutV)) refuse([`${what}.dropOutV`, dropOutV, "0 V or more"]);
  });
}

function isNode(node: number, nodeCount: number): boolean {
  return Number.isInteger(node) && node >= 0 && node < nodeCount;
}

function nodeRange(nodeCount: number): string {
  return `a node, 0 to ${nodeCount - 1}`;
}

function endFault(branch: Branch, nodeCount: number): Fault | null {
  if (!isNode(branch.a, nodeCount)) return ["a", branch.a, nodeRange(nodeCount)];
  if (!isNode(branch.b, nodeCount)) return ["b", branch.b, nodeRange(nodeCount)];
  if (branch.type !== "converter") return null;
  if (!isNode(branch.outA, nodeCount)) return ["outA", branch.outA, nodeRange(nodeCount)];
  return isNode(branch.outB, nodeCount) ? null : ["outB", branch.outB, nodeRange(nodeCount)];
}

function valueFault(branch: Branch): Fault | null {
  switch (branch.type) {
    case "resistor":
    case "contact":
      return ohmFault(branch.ohm);
    case "source":
      return Number.isFinite(branch.volts) ? ohmFault(branch.ohm) : ["volts", branch.volts, "a number of volts"];
    case "diode":
      return isAtLeast0(branch.forwardV) ? ohmFault(branch.ohm) : ["forwardV", branch.forwardV, "0 V or more"];
    case "filament":
      return isAbove0(branch.ratedV) ? wattsFault(branch.watts) : ["ratedV", branch.ratedV, "more than 0 V"];
    case "power":
      if (!isAtLeast0(branch.minV ?? 0)) return ["minV", branch.minV, "0 V or more, or null"];
      return isAbove0(branch.maxV ?? 1) ? wattsFault(branch.watts) : ["maxV", branch.maxV, "more than 0 V, or null"];
    case "current":
      return isAtLeast0(branch.amps) ? null : ["amps", branch.amps, "0 A or more"];
    case "converter":
      if (!isAtLeast0(branch.volts)) return ["volts", branch.volts, "0 V or more"];
      return isAbove0(branch.efficiency) ? null : ["efficiency", branch.efficiency, "more than 0"];
    default:
      return branch satisfies never;
  }
}

function ohmFault(ohm: number): Fault | null {
  return isAtLeast0(ohm) ? null : ["ohm", ohm, "0 ohm or more"];
}

function wattsFault(watts: number): Fault | null {
  return isAtLeast0(watts) ? null : ["watts", watts, "0 W or more"];
}

export function checkState({ branches }: Circuit, { closed, sourceV, idle }: State): void {
  const wanted = `one entry a branch, ${branches.length}`;
  if (closed.length !== branches.length) refuse(["state.closed.length", closed.length, wanted]);
  if (idle && idle.length !== branches.length) refuse(["state.idle.length", idle.length, `${wanted}, or left out`]);
  if (sourceV === null) return;
  if (sourceV.length !== branches.length) refuse(["state.sourceV.length", sourceV.length, `${wanted}, or null`]);
  for (let i = 0; i < branches.length; i++) {
    const volts = sourceV[i]!;
    if (!Number.isFinite(volts) && branches[i]!.type === "source")
      refuse([`state.sourceV[${i}]`, volts, "a number of volts"]);
  }
}
