/** Refuses circuits and states that can't be: they are the caller's mistake, so RangeError with what was got and wanted. */
import type { Branch, Circuit, State } from "../circuit/index.ts";

function demand(isGood: boolean, what: string, got: unknown, wanted: string): void {
  if (!isGood)
    throw new RangeError(
      `solver: ${what} is ${String(got)}; wanted ${wanted}. Check where the circuit is put together.`,
    );
}

function demandNumber(what: string, value: number, isGood: (value: number) => boolean, wanted: string): void {
  demand(Number.isFinite(value) && isGood(value), what, value, wanted);
}

const notNegative = (value: number): boolean => value >= 0;
const positive = (value: number): boolean => value > 0;

export function checkCircuit(circuit: Circuit): void {
  const { nodeCount, branches, relays, references } = circuit;
  demand(Number.isInteger(nodeCount) && nodeCount >= 0, "nodeCount", nodeCount, "a whole number, 0 or more");
  const demandNode = (what: string, node: number): void =>
    demand(Number.isInteger(node) && node >= 0 && node < nodeCount, what, node, `a node, 0 to ${nodeCount - 1}`);
  branches.forEach((branch, index) => {
    const what = `branch ${index} (${branch.type})`;
    demandNode(`${what}: a`, branch.a);
    demandNode(`${what}: b`, branch.b);
    if (branch.type === "converter") {
      demandNode(`${what}: outA`, branch.outA);
      demandNode(`${what}: outB`, branch.outB);
    }
    checkValues(what, branch);
  });
  references.forEach((node, i) => demandNode(`references[${i}]`, node));
  relays.forEach((relay, i) => {
    demand(
      branches[relay.coil]?.type === "resistor",
      `relays[${i}].coil`,
      relay.coil,
      "the index of a resistor branch",
    );
    for (const contact of [...relay.makes, ...relay.breaks]) {
      demand(branches[contact]?.type === "contact", `relays[${i}]: contact`, contact, "the index of a contact branch");
    }
    demandNumber(`relays[${i}].pullInV`, relay.pullInV, notNegative, "0 V or more");
    demandNumber(`relays[${i}].dropOutV`, relay.dropOutV, notNegative, "0 V or more");
  });
}

function checkValues(what: string, branch: Branch): void {
  if ("ohm" in branch) demandNumber(`${what}: ohm`, branch.ohm, notNegative, "0 ohm or more");
  switch (branch.type) {
    case "resistor":
    case "contact":
      break;
    case "source":
      demandNumber(`${what}: volts`, branch.volts, () => true, "a number of volts");
      break;
    case "diode":
      demandNumber(`${what}: forwardV`, branch.forwardV, notNegative, "0 V or more");
      break;
    case "filament":
      demandNumber(`${what}: watts`, branch.watts, notNegative, "0 W or more");
      demandNumber(`${what}: ratedV`, branch.ratedV, positive, "more than 0 V");
      break;
    case "power":
      demandNumber(`${what}: watts`, branch.watts, notNegative, "0 W or more");
      demandNumber(`${what}: minV`, branch.minV ?? 0, notNegative, "0 V or more, or null");
      demandNumber(`${what}: maxV`, branch.maxV ?? 1, positive, "more than 0 V, or null");
      break;
    case "current":
      demandNumber(`${what}: amps`, branch.amps, notNegative, "0 A or more");
      break;
    case "converter":
      demandNumber(`${what}: volts`, branch.volts, notNegative, "0 V or more");
      demandNumber(`${what}: efficiency`, branch.efficiency, positive, "more than 0");
      break;
    default:
      branch satisfies never;
  }
}

export function checkState(circuit: Circuit, state: State): void {
  const count = circuit.branches.length;
  demand(state.closed.length === count, "state.closed.length", state.closed.length, `one entry a branch, ${count}`);
  if (state.sourceV === null) return;
  demand(
    state.sourceV.length === count,
    "state.sourceV.length",
    state.sourceV.length,
    `one entry a branch, ${count}, or null`,
  );
  circuit.branches.forEach((branch, index) => {
    if (branch.type === "source")
      demandNumber(`state.sourceV[${index}]`, state.sourceV![index]!, () => true, "a number of volts");
  });
}
