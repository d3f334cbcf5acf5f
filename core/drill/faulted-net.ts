import type { Branch } from "../circuit/index.ts";
import { applyEdits, type Document, type Edit } from "../document/index.ts";
import { buildNetlist, type NetElement, type Netlist } from "../netlist/index.ts";
import type { Fault } from "./fault.ts";

/** Resistance of bare copper pressed on the frame, ohm; small beside any wire, so that the short is dead. */
const RUBBED_OHM = 1e-3;

/** A net with a fault in it. `shortBranch` is where the fault current flows, for a wire on the frame. */
export interface FaultedNet {
  readonly netlist: Netlist;
  readonly shortBranch: number | null;
}

/**
 * The drawing's net with one fault put in. Swapped and reversed things are other drawings and are built anew; the rest changes
 * one branch. Throws RangeError when the drawing has no such place.
 */
export function faultedNet(document: Document, fault: Fault): FaultedNet {
  const netlist = buildNetlist(document);
  switch (fault.mode) {
    case "open-wire":
      return { netlist: withOpen(netlist, wireAt(netlist, fault).branch), shortBranch: null };
    case "rubbed-through":
      return rubbedThrough(netlist, wireAt(netlist, fault).branch);
    case "blown-fuse":
      return { netlist: withOpen(netlist, elementAt(netlist, fault, "protection").branch), shortBranch: null };
    case "lost-chassis-bond":
      return { netlist: withOpen(netlist, elementAt(netlist, fault, "link").branch), shortBranch: null };
    case "welded-contact":
      return { netlist: withWelded(netlist, elementAt(netlist, fault, "contact")), shortBranch: null };
    case "swapped-coil-pins":
      return rewired(document, swapEnds(netlist, elementAt(netlist, fault, "coil")));
    case "reversed-battery":
      return rewired(document, swapEnds(netlist, elementAt(netlist, fault, "source")));
  }
}

function wireAt(netlist: Netlist, { at }: Fault) {
  const wire = netlist.wireAt.get(at);
  if (!wire) throw new RangeError(`faultedNet: there is no wire "${at}" in the drawing`);
  return wire;
}

function elementAt(netlist: Netlist, { at, mode }: Fault, type: NetElement["spec"]["type"]): NetElement {
  const element = netlist.elements.find(
    ({ spec, part }) => spec.type === type && [part.part.id, `${part.part.id}.${endName(spec)}`].includes(at),
  );
  if (!element) throw new RangeError(`faultedNet: "${at}" has no place for the fault "${mode}"`);
  return element;
}

function endName(spec: NetElement["spec"]): string {
  if (spec.type === "protection") return spec.terminal;
  return spec.type === "contact" ? spec.b : "";
}

function withBranches(netlist: Netlist, branches: readonly Branch[], nodeCount = netlist.circuit.nodeCount): Netlist {
  return { ...netlist, circuit: { ...netlist.circuit, nodeCount, branches } };
}

/** A contact nobody ever closes stands for metal that is gone. */
function withOpen(netlist: Netlist, branch: number): Netlist {
  const gone = netlist.circuit.branches[branch];
  if (!gone) return netlist;
  const branches = [...netlist.circuit.branches];
  branches[branch] = { type: "contact", a: gone.a, b: gone.b, ohm: 0 };
  return withBranches(netlist, branches);
}

function withWelded(netlist: Netlist, contact: NetElement): Netlist {
  const welded = netlist.circuit.branches[contact.branch]!;
  const branches = [
    ...netlist.circuit.branches,
    { ...welded, type: "resistor", ohm: "ohm" in welded ? welded.ohm : 0 } as Branch,
  ];
  return withBranches(netlist, branches);
}

/** The wire touches the frame half way along. */
function rubbedThrough(netlist: Netlist, branch: number): FaultedNet {
  const wire = netlist.circuit.branches[branch]!;
  const middle = netlist.circuit.nodeCount;
  const half = "ohm" in wire ? wire.ohm / 2 : 0;
  const branches: Branch[] = [...netlist.circuit.branches];
  branches[branch] = { type: "resistor", a: wire.a, b: middle, ohm: half };
  branches.push({ type: "resistor", a: middle, b: wire.b, ohm: half });
  const shortBranch = branches.push({ type: "resistor", a: middle, b: netlist.chassis, ohm: RUBBED_OHM }) - 1;
  return { netlist: withBranches(netlist, branches, middle + 1), shortBranch };
}

function rewired(document: Document, edits: readonly Edit[]): FaultedNet {
  return { netlist: buildNetlist(applyEdits(document, edits)), shortBranch: null };
}

/** Every wire on the element's first terminal moves to its second, and the other way round. */
function swapEnds(netlist: Netlist, { part, spec }: NetElement): Edit[] {
  const [first, second] =
    spec.type === "coil" ? [spec.a, spec.b] : spec.type === "source" ? [spec.plus, spec.minus] : ["", ""];
  const one = `${part.part.id}.${first}`;
  const other = `${part.part.id}.${second}`;
  const swapped = (address: string) => (address === one ? other : address === other ? one : address);
  return netlist.wires
    .filter(({ wire }) => [wire.from, wire.to].some((address) => address === one || address === other))
    .map(({ wire }) => ({ op: "set-wire", id: wire.id, change: { from: swapped(wire.from), to: swapped(wire.to) } }));
}
