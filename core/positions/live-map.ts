import { restCombination, type Netlist } from "../netlist/index.ts";
import { conditionInWords } from "./condition.ts";
import { conesOf, type Cone } from "./cones.ts";
import { faultConductions, type Conduction, type SolvedCone } from "./conduction.ts";
import { faultCases } from "./fault-cases.ts";
import { groupMap } from "./group-map.ts";
import { groupsOf, type Group } from "./groups.ts";
import { ALWAYS_HOT, COLD, type Heat } from "./heat.ts";
import { overlargeGroup } from "./overlarge-group.ts";
import { railsOf, type Rails } from "./rails.ts";
import { relayTables, SolveOnce, type RelayTables } from "./relay-tables.ts";
import { TruthTable } from "./truth-table.ts";
import type { GroupSample, Unproved } from "./types.ts";

/** Which metal is hot, when, and by what way: over every combination of the controls. */
export interface LiveMap {
  /** By node. */
  readonly heat: readonly Heat[];
  readonly samples: readonly GroupSample[];
  readonly isSampled: boolean;
  readonly combinations: number;
  readonly unproved: readonly Unproved[];
  /** The ways the groups can stand together that matter to a fault, one way for each group. */
  readonly faultCases: readonly (readonly Conduction[])[];
}

export function liveMap(netlist: Netlist): LiveMap {
  const rails = railsOf(netlist);
  const byClass = new Map<number, Heat>();
  const samples = new Map<string, GroupSample>();
  const unproved: Unproved[] = [];
  const conductions: (readonly Conduction[])[] = [];
  const solve = new SolveOnce(netlist);
  const rest = restCombination(netlist);
  samples.set(rest.join(" "), { combination: rest, solution: solve.at(rest) });
  let combinations = 0;
  let isSampled = true;
  // Small ones first: a monster must not spend the budget of the rest.
  const groups = groupsOf(netlist, rails).toSorted((one, other) => one.size - other.size);
  for (const group of groups) {
    const cones: SolvedCone[] = [];
    const tooMany = new Set<number>();
    for (const cone of conesOf(netlist, rails, group).toSorted((one, other) => one.size - other.size)) {
      combinations += cone.size;
      const tables = relayTables(netlist, rails, cone, group, solve);
      cones.push({ cone, tables });
      if (tables?.isSampled !== true) isSampled = false;
      if (!tables) {
        for (const [one, heat] of overlargeGroup(netlist, rails, cone)) if (cone.owned.has(one)) byClass.set(one, heat);
        for (const control of cone.controls) tooMany.add(control);
        continue;
      }
      for (const sample of tables.samples) samples.set(sample.combination.join(" "), sample);
      noteUnsettled(netlist, cone, tables, unproved);
      heatOfCone(netlist, rails, cone, tables, byClass);
    }
    if (tooMany.size > 0) unproved.push({ controls: idsOf(netlist, [...tooMany]), why: "too-many", when: "" });
    conductions.push(faultConductions(netlist, cones));
  }
  const heat = Array.from(rails.classOf, (one) => (rails.plus[one] === 1 ? ALWAYS_HOT : (byClass.get(one) ?? COLD)));
  return {
    heat,
    samples: [...samples.values()],
    isSampled,
    combinations,
    unproved,
    faultCases: faultCases(rails, groups, conductions),
  };
}

function idsOf(netlist: Netlist, controls: readonly number[]): string[] {
  return controls.map((control) => netlist.controls[control]!.id);
}

function noteUnsettled(netlist: Netlist, group: Group, { settled }: RelayTables, unproved: Unproved[]): void {
  const all = TruthTable.full(group.size);
  const open = all.without(settled);
  if (open.isEmpty()) return;
  unproved.push({
    controls: idsOf(netlist, group.controls),
    why: "unsettled",
    when: conditionInWords(netlist, group.controls, open, all),
  });
}

function heatOfCone(netlist: Netlist, rails: Rails, cone: Cone, tables: RelayTables, byClass: Map<number, Heat>): void {
  const map = groupMap(netlist, rails, cone, tables);
  const none = new TruthTable(cone.size);
  for (const one of cone.owned) {
    const direct = (map.direct.get(one) ?? none).and(tables.settled);
    const load = (map.load.get(one) ?? none).and(tables.settled);
    const hot = direct.or(load);
    if (hot.isEmpty()) continue;
    const when = conditionInWords(netlist, cone.controls, hot, tables.settled);
    byClass.set(one, {
      hot: when === "always" ? "always" : hot.has(0) ? "at-rest" : "switched",
      via: direct.isEmpty() ? "load" : "direct",
      when,
      atRest: direct.has(0) ? "direct" : load.has(0) ? "load" : null,
    });
  }
}
