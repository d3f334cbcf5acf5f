import { controlNumber, controlPositions, type NetElement, type Netlist } from "../netlist/index.ts";
import type { Group } from "./groups.ts";
import type { Rails } from "./rails.ts";
import type { RelayTables } from "./relay-tables.ts";
import { TruthTable } from "./truth-table.ts";

/** Where the classes of one group are hot: sets of the group's combinations. Rails are fixed and not in here. */
export interface GroupMap {
  readonly direct: ReadonlyMap<number, TruthTable>;
  /** Hot only through a load. */
  readonly load: ReadonlyMap<number, TruthTable>;
}

interface Edge {
  readonly from: number;
  readonly to: number;
  /** Combinations in which it conducts; `null`: all. */
  readonly gate: TruthTable | null;
}

/**
 * Follows every way out of the source positives at once, for all combinations of the group: first over closed conductors, then
 * through loads wherever a class is not joined to a negative.
 */
export function groupMap(netlist: Netlist, rails: Rails, group: Group, relays: RelayTables): GroupMap {
  const gates = new Gates(netlist, group, relays);
  const edges = directEdges(group, rails, gates);
  const full = TruthTable.full(group.size);
  const direct = new Spread(group.size);
  const negative = new Spread(group.size);
  for (const one of classesOf(group, rails)) {
    if (rails.plus[one] === 1) direct.seed(one, full);
    if (rails.minus[one] === 1) negative.seed(one, full);
  }
  for (const element of group.elements) seedSwitchedSource(element, rails, gates, direct, negative);
  direct.run(edges);
  negative.run(edges.map(({ from, to, gate }) => ({ from: to, to: from, gate })));
  const load = new Spread(group.size);
  for (const [one, table] of direct.tables) load.seed(one, without(table, negative.tables.get(one)));
  load.run([...edges, ...loadEdges(group, rails)], negative.tables);
  const onlyLoad = [...load.tables].map(([one, table]): [number, TruthTable] => {
    const viaLoad = without(table, negative.tables.get(one));
    return [one, without(viaLoad, direct.tables.get(one))];
  });
  return { direct: direct.tables, load: new Map(onlyLoad) };
}

function without(table: TruthTable, other: TruthTable | undefined): TruthTable {
  return other ? table.without(other) : table;
}

function classesOf(group: Group, rails: Rails): Set<number> {
  const nodes = group.elements.flatMap(({ a, b, outA, outB }) => [a, b, outA, outB]).filter((node) => node >= 0);
  return new Set(nodes.map((node) => rails.classOf[node]!));
}

function seedSwitchedSource(element: NetElement, rails: Rails, gates: Gates, direct: Spread, negative: Spread): void {
  const { spec, a, b, outA, outB } = element;
  const all = TruthTable.full(direct.size);
  if (spec.type === "source") {
    direct.seed(rails.classOf[a]!, gates.of(element) ?? all);
    if (rails.minus[rails.classOf[b]!] === 1) negative.seed(rails.classOf[b]!, all);
  }
  if (spec.type === "converter") {
    direct.seed(rails.classOf[outA]!, gates.of(element) ?? all);
    if (rails.minus[rails.classOf[outB]!] === 1) negative.seed(rails.classOf[outB]!, all);
  }
}

/** Closed conductors: contacts both ways, diodes forward. A suppression diode counts as part of its coil and is no conductor. */
function directEdges(group: Group, rails: Rails, gates: Gates): Edge[] {
  return group.elements.flatMap((element): Edge[] => {
    const { spec } = element;
    const from = rails.classOf[element.a]!;
    const to = rails.classOf[element.b]!;
    if (spec.type === "contact" || spec.type === "link") {
      const gate = gates.of(element);
      return [
        { from, to, gate },
        { from: to, to: from, gate },
      ];
    }
    return spec.type === "diode" && spec.suppresses === undefined ? [{ from, to, gate: null }] : [];
  });
}

function loadEdges(group: Group, rails: Rails): Edge[] {
  return group.elements.flatMap(({ spec, a, b }): Edge[] => {
    const passes =
      spec.type === "load" ||
      spec.type === "coil" ||
      spec.type === "converter" ||
      (spec.type === "diode" && spec.suppresses);
    if (!passes) return [];
    const from = rails.classOf[a]!;
    const to = rails.classOf[b]!;
    return [
      { from, to, gate: null },
      { from: to, to: from, gate: null },
    ];
  });
}

/** The combinations in which each moving element conducts. */
class Gates {
  private readonly netlist: Netlist;
  private readonly group: Group;
  private readonly relays: RelayTables;
  private readonly positions = new Map<string, TruthTable>();

  constructor(netlist: Netlist, group: Group, relays: RelayTables) {
    this.netlist = netlist;
    this.group = group;
    this.relays = relays;
  }

  /** `null`: in all. */
  of(element: NetElement): TruthTable | null {
    const { spec } = element;
    if (spec.type === "converter") return this.relays.working.get(element.index) ?? null;
    if (spec.type === "contact" && "coil" in spec.movedBy) {
      const pulledIn = this.relays.pulledIn.get(element.coil);
      if (!pulledIn) return null;
      return spec.movedBy.closedWhen === "pulled-in" ? pulledIn : this.relays.settled.without(pulledIn);
    }
    const positions = controlPositions(element);
    return positions && this.positionTable(controlNumber(this.netlist, element), positions);
  }

  private positionTable(control: number, positions: readonly string[]): TruthTable {
    const key = `${control} ${positions.join(" ")}`;
    const kept = this.positions.get(key);
    if (kept) return kept;
    const table = new TruthTable(this.group.size);
    const { controls } = this.group;
    const countOf = (one: number) => this.netlist.controls[one]!.positions.length;
    const stride = controls.slice(0, controls.indexOf(control)).reduce((product, one) => product * countOf(one), 1);
    const isIn = this.netlist.controls[control]!.positions.map((name) => positions.includes(name));
    for (let index = 0; index < this.group.size; index++) {
      if (isIn[Math.floor(index / stride) % isIn.length]) table.add(index);
    }
    this.positions.set(key, table);
    return table;
  }
}

/** Sets of combinations spreading from class to class until nothing changes. */
class Spread {
  readonly tables = new Map<number, TruthTable>();
  readonly size: number;
  private readonly fresh = new Set<number>();

  constructor(size: number) {
    this.size = size;
  }

  seed(one: number, table: TruthTable): void {
    this.tableOf(one).flow(table, null, null);
    this.fresh.add(one);
  }

  /** `block`: combinations in which a class passes nothing on and takes nothing in. */
  run(edges: readonly Edge[], block?: ReadonlyMap<number, TruthTable>): void {
    const leaving = new Map<number, Edge[]>();
    for (const edge of edges) {
      const list = leaving.get(edge.from);
      if (list) list.push(edge);
      else leaving.set(edge.from, [edge]);
    }
    for (const from of this.fresh) {
      this.fresh.delete(from);
      for (const { to, gate } of leaving.get(from) ?? []) {
        if (this.tableOf(to).flow(this.tableOf(from), gate, block?.get(to) ?? null)) this.fresh.add(to);
      }
    }
  }

  private tableOf(one: number): TruthTable {
    let table = this.tables.get(one);
    if (!table) {
      table = new TruthTable(this.size);
      this.tables.set(one, table);
    }
    return table;
  }
}
