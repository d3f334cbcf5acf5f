import { NodeSets, type Netlist } from "../netlist/index.ts";
import { isFixed, joinCircuits, movingElements, nodesOf } from "./circuits.ts";

/**
 * The net with everything fixed drawn together: wires, joints and fitted fuses. Each set of nodes is one *class*. A class that
 * holds an end of a source that is always there is a *rail*: whatever the controls do, it stands where it stands, and so
 * circuits that only meet in rails do not influence one another. A negative that some contact or diode can join to a positive
 * (batteries put in series by a switch) is no rail, and of frames that meet in loads only one has any.
 */
export interface Rails {
  readonly classOf: Int32Array;
  /** 1 for classes that are always tied to a source positive. */
  readonly plus: Uint8Array;
  /** 1 for classes tied to a source negative and to no positive: a return. */
  readonly minus: Uint8Array;
  readonly isRail: Uint8Array;
}

const kept = new WeakMap<Netlist, Rails>();

export function railsOf(netlist: Netlist): Rails {
  let rails = kept.get(netlist);
  if (!rails) {
    rails = findRails(netlist);
    kept.set(netlist, rails);
  }
  return rails;
}

function findRails(netlist: Netlist): Rails {
  const sets = fixedSets(netlist);
  const classOf = Int32Array.from({ length: netlist.nodeCount }, (_, node) => sets.find(node));
  const plus = new Uint8Array(netlist.nodeCount);
  const anyPlus = new Uint8Array(netlist.nodeCount);
  const minus = new Uint8Array(netlist.nodeCount);
  for (const { spec, a, b, outA, outB } of netlist.elements) {
    if (spec.type === "source") {
      if (spec.when === null) plus[classOf[a]!] = 1;
      anyPlus[classOf[a]!] = 1;
      minus[classOf[b]!] = 1;
    }
    if (spec.type === "converter") {
      anyPlus[classOf[outA]!] = 1;
      minus[classOf[outB]!] = 1;
    }
  }
  for (let one = 0; one < minus.length; one++) if (anyPlus[one] === 1) minus[one] = 0;
  const reached = reachedFrom(netlist, classOf, anyPlus);
  const isRail = plus.map((value, one) => (value === 1 || (minus[one] === 1 && !reached.has(one)) ? 1 : 0));
  return { classOf, plus, minus, isRail: onOneFrame(netlist, classOf, isRail) };
}

/**
 * Rails tied to one another by sources that are always there stand still against each other: a frame. Where a circuit lies between
 * two frames, the volts of the one hang on what else ties them, so only the frame with the better zero keeps its rails.
 */
function onOneFrame(netlist: Netlist, classOf: Int32Array, isRail: Uint8Array): Uint8Array {
  const frames = new NodeSets(netlist.nodeCount);
  for (const { spec, a, b } of netlist.elements) {
    if (spec.type === "source" && spec.when === null) frames.join(classOf[a]!, classOf[b]!);
  }
  const moving = movingElements(netlist);
  const circuits = joinCircuits(netlist, { classOf, isRail }, moving);
  const met = new NodeSets(netlist.nodeCount);
  const firstOf = new Map<number, number>();
  moving.forEach((element, index) => {
    for (const node of nodesOf(element)) {
      const one = classOf[node]!;
      if (isRail[one] === 0) continue;
      const frame = frames.find(one);
      const first = firstOf.get(circuits.find(index));
      if (first === undefined) firstOf.set(circuits.find(index), frame);
      else met.join(first, frame);
    }
  });
  const best = new Map<number, number>();
  for (const zero of netlist.circuit.references) {
    const frame = frames.find(classOf[zero]!);
    if (!best.has(met.find(frame))) best.set(met.find(frame), frame);
  }
  return isRail.map((value, one) => {
    const frame = frames.find(one);
    return value === 1 && (best.get(met.find(frame)) ?? frame) === frame ? 1 : 0;
  });
}

/** Classes some contact or forward diode could join to one of `starts`, if all were closed. */
function reachedFrom(netlist: Netlist, classOf: Int32Array, starts: Uint8Array): ReadonlySet<number> {
  const next = new Map<number, number[]>();
  const lead = (from: number, to: number) => next.set(from, [...(next.get(from) ?? []), to]);
  for (const { spec, branch, a, b } of netlist.elements) {
    if (branch < 0) continue;
    const isDiode = spec.type === "diode" && spec.suppresses === undefined;
    if (spec.type === "contact" || isDiode) lead(classOf[a]!, classOf[b]!);
    if (spec.type === "contact") lead(classOf[b]!, classOf[a]!);
  }
  const reached = new Set(Array.from(starts.keys()).filter((one) => starts[one] === 1));
  for (const one of reached) for (const other of next.get(one) ?? []) reached.add(other);
  return reached;
}

/** Nodes joined without any contact: by wires, links and fitted protection. */
function fixedSets(netlist: Netlist): NodeSets {
  const sets = new NodeSets(netlist.nodeCount);
  for (const wire of netlist.wires) sets.join(wire.from.node, wire.to.node);
  for (const element of netlist.elements) if (isFixed(element)) sets.join(element.a, element.b);
  return sets;
}
