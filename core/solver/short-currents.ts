/**
 * The dead-short current of every node at once.
 *
 * With loads and converters taken out the circuit is linear up to its diodes: a short at a node draws V / R, with V its open
 * volts and R the resistance it sees, and R for all nodes is the diagonal of the inverse, which one walk back over the elimination
 * gives. A short can turn a diode over, though. What it does to a diode's volts follows from the response to a current through
 * that diode, so each node is checked against every diode; nodes that find one on the wrong line move on to the set of
 * conducting diodes they ask for, and each set met is worked out once for all nodes in it.
 */
import type { Branch, Circuit } from "../circuit/index.ts";
import { ROUNDING_A, ROUNDING_V, settleDiodes } from "./diodes.ts";
import { Model } from "./model.ts";

/** Amps of a node that no source reaches, or whose short nothing would limit. */
export const NO_SHORT_A = -1;

/** Amps below which only the ties of blocking diodes are at work. */
const LEAKAGE_A = 1e-9;
/** An ideal diode's stand-in here: its volts must show which way its current runs. */
const LEAST_DIODE_OHM = 1e-9;
/** Amps that only such stand-ins could let pass: nothing limits the short. */
const UNLIMITED_A = 1e8;
/** Turns of all wrong diodes at once a node may ask for before it turns one at a time, and turns in all. */
const PATIENCE = 8;
const TURNS = 200;

/** The model shorts are worked out on: `circuit` with loads and converters for good absent. */
export function shortModel(circuit: Circuit): Model {
  const branches = circuit.branches.map((branch) => (branch.type === "diode" ? withResistance(branch) : branch));
  return new Model({ ...circuit, branches });
}

function withResistance<D extends Branch & { readonly ohm: number }>(branch: D): D {
  return { ...branch, ohm: Math.max(branch.ohm, LEAST_DIODE_OHM) };
}

/** Nodes that share a set of conducting diodes, and how many sets each has tried. */
interface Group {
  readonly conducting: ReadonlySet<number>;
  readonly nodes: number[];
}

/** Amps of a dead short from each node to the zero of its network, for a short model whose contacts and sources are set. */
export function shortCurrents(model: Model): Float64Array {
  const { nodeCount } = model.circuit;
  const amps = new Float64Array(nodeCount).fill(NO_SHORT_A);
  for (const diode of model.table.diodes) model.set(diode, false);
  if (settleDiodes(model).status !== "ok") return amps;
  const turns = new Int32Array(nodeCount);
  const atRest = new Set(model.table.diodes.filter((diode) => model.on[diode]));
  let groups: Group[] = [{ conducting: atRest, nodes: Array.from({ length: nodeCount }, (_, node) => node) }];
  while (groups.length > 0) {
    const next = new Map<string, Group>();
    for (const group of groups) {
      for (const { node, wrong } of shortGroup(model, group, amps)) {
        if (++turns[node]! > TURNS) continue;
        const conducting = new Set(group.conducting);
        for (const diode of turns[node]! > PATIENCE ? wrong.slice(0, 1) : wrong) {
          if (!conducting.delete(diode)) conducting.add(diode);
        }
        const key = [...conducting].sort((a, b) => a - b).join();
        const there = next.get(key);
        if (there) there.nodes.push(node);
        else next.set(key, { conducting, nodes: [node] });
      }
    }
    groups = [...next.values()];
  }
  return amps;
}

/** Takes loads, converters and the branches named out of a short model, and puts all others back; contacts and sources are to be set anew. */
export function takeOut(model: Model, leaveOut: Uint8Array | null): void {
  model.circuit.branches.forEach(({ type }, index) => {
    const isLoad = type === "power" || type === "current" || type === "filament" || type === "converter";
    model.setAbsent(index, isLoad || leaveOut?.[index] === 1);
  });
}

/** Works out the amps of a group's nodes with its diodes conducting; gives the nodes whose short would turn some of them over. */
function shortGroup(
  model: Model,
  { conducting, nodes }: Group,
  amps: Float64Array,
): { node: number; wrong: number[] }[] {
  for (const diode of model.table.diodes) model.set(diode, conducting.has(diode));
  if (model.solveLinear() !== null) return [];
  model.complete();
  const { elimination, positionOf } = model.assembly;
  const ohmAt = elimination.resistanceToZero();
  const { known } = model.assembly.networks();
  const diodes = model.table.diodes.filter((diode) => !model.absent[diode]);
  const responses = diodes.map((diode) => responseTo(model, diode));
  const moved: { node: number; wrong: number[] }[] = [];
  for (const node of nodes) {
    const at = positionOf[node]!;
    const ohm = ohmAt[at]!;
    if (known[node] === 0 || ohm === 0) continue;
    const shortA = model.nodeV[node]! / ohm;
    const wrong = diodes.filter((diode, i) => isWrong(model, diode, model.volts(diode) - responses[i]![at]! * shortA));
    if (wrong.length > 0) moved.push({ node, wrong });
    else if (Math.abs(shortA) > LEAKAGE_A && Math.abs(shortA) < UNLIMITED_A) amps[node] = Math.abs(shortA);
  }
  return moved;
}

/** Volts every position rises by when one ampere is fed in at the diode's anode and taken out at its cathode. */
function responseTo(model: Model, diode: number): Float64Array {
  const { elimination, positionOf } = model.assembly;
  const { a, b } = model.circuit.branches[diode]!;
  const volts = new Float64Array(elimination.plan.count);
  volts[positionOf[a]!]! += 1;
  volts[positionOf[b]!]! -= 1;
  elimination.respond(elimination.all, volts);
  return volts;
}

function isWrong(model: Model, diode: number, volts: number): boolean {
  const over = volts - model.emf[diode]!;
  const rounding = ROUNDING_V * (1 + Math.abs(volts));
  return model.on[diode] ? over < -(rounding + ROUNDING_A / model.g[diode]!) : over > rounding;
}
