import type { Branch, Relay } from "../circuit/index.ts";
import { systemOf, wireSurroundings, type Cover, type Document, type System } from "../document/index.ts";
import { CHASSIS, modelOf, type Coil, type Element, type Surroundings } from "../parts/index.ts";
import { wireCapacityA, wireOhmPerM } from "../reference/index.ts";
import { branchOf, endsOf } from "./branches.ts";
import { NodeSets } from "./node-sets.ts";
import { seriesUppers } from "./series-strings.ts";
import { knownParts, type KnownPart } from "./terminal-lookup.ts";
import type { NetControl, NetElement, Netlist, NetPart, NetTerminal, NetWire } from "./types.ts";

/** A wire whose size or length is unknown is solved as this, so that what hangs on it still gets an answer (circuit file, reading 10). */
const UNKNOWN_WIRE_OHM = 1e-4;

type Mutable<T> = { -readonly [K in keyof T]: T[K] };

/** Numbers the nodes: one for each terminal, with the posts of a bar sharing one, and one for the chassis. */
class Builder {
  readonly terminals: NetTerminal[] = [];
  readonly terminalAt = new Map<string, NetTerminal>();
  readonly elements: Mutable<NetElement>[] = [];
  readonly branches: Branch[] = [];
  readonly relays: Relay[] = [];
  readonly chassis = 0;
  private nodes = 1;

  newNode(): number {
    return this.nodes++;
  }

  get nodeCount(): number {
    return this.nodes;
  }

  addBranch(branch: Branch | null): number {
    return branch ? this.branches.push(branch) - 1 : -1;
  }
}

/**
 * Translates a drawing into an electrical net: parts by their models, wires by size and length.
 * The document must have come through `readCircuitFile` or edits of such a one; RangeError otherwise.
 */
export function buildNetlist(document: Document): Netlist {
  const system = systemOf(document);
  const known = knownParts(document);
  const uppers = seriesUppers(document, known, system.nominalV);
  const builder = new Builder();
  const wiresAt = wiresByTerminal(document);
  const parts = known.map((part, index) =>
    addPart(builder, part, index, surroundingsOf(system, uppers.has(part.part.id)), wiresAt),
  );
  bindRelays(builder, parts);
  const wires = document.wires.map((_, index) => addWire(builder, document, system, index));
  return {
    document,
    system,
    parts,
    terminals: builder.terminals,
    wires,
    elements: builder.elements,
    controls: controlsOf(parts),
    nodeCount: builder.nodeCount,
    chassis: builder.chassis,
    circuit: {
      nodeCount: builder.nodeCount,
      branches: builder.branches,
      relays: builder.relays,
      references: references(builder, wires),
    },
    terminalAt: builder.terminalAt,
    partAt: new Map(parts.map((part) => [part.part.id, part])),
    wireAt: new Map(wires.map((wire) => [wire.wire.id, wire])),
  };
}

function surroundingsOf(system: System, seriesUpper: boolean): Surroundings {
  return { nominalV: system.nominalV, seriesUpper };
}

function wiresByTerminal(document: Document): Map<string, number[]> {
  const at = new Map<string, number[]>();
  document.wires.forEach((wire, index) => {
    for (const address of new Set([wire.from, wire.to])) {
      const list = at.get(address);
      if (list) list.push(index);
      else at.set(address, [index]);
    }
  });
  return at;
}

function addPart(
  builder: Builder,
  known: KnownPart,
  index: number,
  surroundings: Surroundings,
  wiresAt: Map<string, number[]>,
): NetPart {
  const { part, kind, settings } = known;
  const specs = modelOf(part, surroundings);
  const nodeOf = nodeNames(builder, known, specs);
  const net: Mutable<NetPart> = {
    index,
    part,
    kind,
    settings,
    control: kind.control?.(settings) ?? null,
    terminals: [],
    elements: [],
  };
  net.terminals = known.terminals.map((terminal) => {
    const address = `${part.id}.${terminal.name}`;
    const wires = wiresAt.get(address) ?? [];
    const cover: Cover =
      part.covers?.[terminal.name] ?? (wires.length > 0 ? terminal.cover.wired : terminal.cover.unwired);
    const bound = {
      index: builder.terminals.length,
      address,
      part: net,
      terminal,
      node: nodeOf(terminal.name),
      wires,
      cover,
    };
    builder.terminals.push(bound);
    builder.terminalAt.set(address, bound);
    return bound;
  });
  net.elements = specs.map((spec) => addElement(builder, net, spec, nodeOf));
  return net;
}

/** Names of one part to nodes. Posts of a bar share the node of the first; `$inner` names get nodes of their own on first use. */
function nodeNames(builder: Builder, known: KnownPart, specs: readonly Element[]): (name: string) => number {
  const nodes = new Map<string, number>([[CHASSIS, builder.chassis]]);
  for (const spec of specs) {
    if (spec.type !== "bar") continue;
    const shared =
      spec.terminals.map((name) => nodes.get(name)).find((node) => node !== undefined) ?? builder.newNode();
    for (const name of spec.terminals) nodes.set(name, shared);
  }
  for (const terminal of known.terminals) if (!nodes.has(terminal.name)) nodes.set(terminal.name, builder.newNode());
  return (name) => {
    const node = nodes.get(name);
    if (node !== undefined) return node;
    if (!name.startsWith("$")) {
      throw new RangeError(
        `buildNetlist: kind "${known.kind.kind}" names terminal "${name}", which it does not declare`,
      );
    }
    const inner = builder.newNode();
    nodes.set(name, inner);
    return inner;
  };
}

function addElement(builder: Builder, part: NetPart, spec: Element, nodeOf: (name: string) => number): NetElement {
  const ends = endsOf(spec, nodeOf);
  const element = {
    index: builder.elements.length,
    part,
    spec,
    ...ends,
    branch: builder.addBranch(branchOf(spec, ends)),
    coil: -1,
    relay: -1,
  };
  builder.elements.push(element);
  return element;
}

/** Ties every contact that a coil moves to that coil, and lists the relays for the solver. */
function bindRelays(builder: Builder, parts: readonly NetPart[]): void {
  for (const part of parts) {
    for (const coil of part.elements) {
      if (coil.spec.type !== "coil") continue;
      const moved = part.elements.filter(
        ({ spec }) =>
          spec.type === "contact" && "coil" in spec.movedBy && spec.movedBy.coil === (coil.spec as Coil).name,
      );
      for (const contact of moved) builder.elements[contact.index]!.coil = coil.index;
      builder.elements[coil.index]!.relay = builder.relays.length;
      builder.relays.push({
        coil: coil.branch,
        pullInV: coil.spec.pullInV,
        dropOutV: coil.spec.dropOutV,
        makes: moved.filter(({ spec }) => closedWhen(spec) === "pulled-in").map(({ branch }) => branch),
        breaks: moved.filter(({ spec }) => closedWhen(spec) === "released").map(({ branch }) => branch),
      });
    }
  }
}

function closedWhen(spec: Element): "pulled-in" | "released" | null {
  return spec.type === "contact" && "coil" in spec.movedBy ? spec.movedBy.closedWhen : null;
}

function addWire(builder: Builder, document: Document, system: System, index: number): NetWire {
  const wire = document.wires[index]!;
  const from = terminalOr(builder, wire.id, wire.from);
  const to = terminalOr(builder, wire.id, wire.to);
  const copper = wire.size === undefined ? null : wireOhmPerM(wire.size, system.conductorC);
  const known = copper !== null && wire.metres !== undefined;
  const ohm = copper && wire.metres !== undefined ? copper.ohmPerM * wire.metres : UNKNOWN_WIRE_OHM;
  return {
    index,
    wire,
    from,
    to,
    branch: builder.addBranch({ type: "resistor", a: from.node, b: to.node, ohm }),
    ohm,
    known,
    areaMm2: copper?.areaMm2 ?? null,
    capacityA:
      wire.size === undefined
        ? null
        : wireCapacityA({ size: wire.size, ...wireSurroundings(wire, system) }, system.capacityTable),
  };
}

function terminalOr(builder: Builder, wire: string, address: string): NetTerminal {
  const terminal = builder.terminalAt.get(address);
  if (!terminal)
    throw new RangeError(`buildNetlist: wire "${wire}" ends at "${address}", which is no terminal of the drawing`);
  return terminal;
}

function controlsOf(parts: readonly NetPart[]): NetControl[] {
  const engine: NetControl = { id: "engine", positions: ["off", "running"], part: null };
  const operated = parts.filter((part) => part.control !== null);
  return [engine, ...operated.map((part) => ({ id: part.part.id, positions: part.control!.positions, part }))];
}

/** Zero volts, best first: batteries that do not stand on another's positive, then those that do, the chassis, converter outputs. */
function references(builder: Builder, wires: readonly NetWire[]): number[] {
  const joined = new NodeSets(builder.nodeCount);
  for (const { from, to } of wires) joined.join(from.node, to.node);
  for (const { spec, branch, a, b } of builder.elements) {
    if (branch >= 0 && (spec.type === "link" || spec.type === "protection")) joined.join(a, b);
  }
  const zeros = builder.elements.filter(({ spec }) => spec.type === "source" && spec.zero);
  const isUpper = (upper: NetElement) => zeros.some((lower) => lower !== upper && joined.same(lower.a, upper.b));
  const lower = zeros.filter((zero) => !isUpper(zero));
  const upper = zeros.filter(isUpper);
  const outputs = builder.elements.filter(({ spec }) => spec.type === "converter").map(({ outB }) => outB);
  return [...lower.map(({ b }) => b), ...upper.map(({ b }) => b), builder.chassis, ...outputs];
}
