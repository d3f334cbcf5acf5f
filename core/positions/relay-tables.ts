import type { Solution } from "../circuit/index.ts";
import { restCombination, type Combination, type Netlist } from "../netlist/index.ts";
import { solveCombination } from "../readings/index.ts";
import { digitsOf, type Group } from "./groups.ts";
import { isPlainBranch } from "./plain-branch.ts";
import type { Rails } from "./rails.ts";
import { TruthTable } from "./truth-table.ts";
import type { GroupSample } from "./types.ts";

/** Up to this many combinations of a group every one is solved; above, the report says so and relays are free (circuit file, "Hot"). */
const MOST_SOLVED = 2 ** 16;
/**
 * ...and, over the whole drawing, up to this many combinations times elements: a few seconds' work at the worst, so that no
 * drawing ever freezes the program. 2^16 combinations of a drawing of 64 elements.
 */
const MOST_WORK = 2 ** 22;
/** Up to this many a group without relays is followed bit by bit. */
const MOST_FOLLOWED = 2 ** 20;
/** Up to this many the solutions themselves are kept for the rules about every combination. */
const MOST_KEPT = 2 ** 10;

export interface RelayTables {
  /** By coil element number: the combinations in which it is pulled in. */
  readonly pulledIn: ReadonlyMap<number, TruthTable>;
  /** By converter element number: the combinations in which it works. */
  readonly working: ReadonlyMap<number, TruthTable>;
  readonly settled: TruthTable;
  readonly samples: readonly GroupSample[];
  /** What is not among the samples would show nothing that these don't. */
  readonly isSampled: boolean;
}

/**
 * Solves every combination of a group (a cone of the `whole` one), the other groups at rest, and notes where each relay stands. `null`: too many to solve.
 * A plain branch, and a group with nothing that needs solving and too many combinations to keep, are not solved at all.
 */
export function relayTables(
  netlist: Netlist,
  rails: Rails,
  group: Group,
  whole: Group,
  solve: SolveOnce,
): RelayTables | null {
  const mustSolve = group.coils.length > 0 || group.elements.some(({ spec }) => spec.type === "converter");
  if (group.size <= MOST_FOLLOWED && isPlainBranch(rails, group, solve.at(restCombination(netlist)))) {
    return unsolved(group, true);
  }
  if (!mustSolve && group.size > MOST_KEPT) return group.size > MOST_FOLLOWED ? null : unsolved(group, false);
  const key = `${whole.elements[0]?.index}: ${group.controls.join(" ")}`;
  const before = solve.tables.get(key);
  if (before) return before;
  if (group.size > MOST_SOLVED || !solve.affords(group.size)) return null;
  const tables = solvedTables(netlist, group, whole, solve);
  solve.tables.set(key, tables);
  return tables;
}

/** For all relays of the whole group, so that another cone with the same controls finds its own among them. */
function solvedTables(netlist: Netlist, group: Group, whole: Group, solve: SolveOnce): RelayTables {
  const converters = whole.elements.filter(({ spec }) => spec.type === "converter");
  const pulledIn = new Map(whole.coils.map((coil) => [coil.index, new TruthTable(group.size)]));
  const working = new Map(converters.map((converter) => [converter.index, new TruthTable(group.size)]));
  const settled = new TruthTable(group.size);
  const samples: GroupSample[] = [];
  for (let index = 0; index < group.size; index++) {
    const combination = restCombination(netlist);
    digitsOf(netlist, group.controls, index).forEach((digit, at) => {
      combination[group.controls[at]!] = digit;
    });
    const solution = solve.at(combination);
    if (group.size <= MOST_KEPT) samples.push({ combination, solution });
    if (solution.status !== "ok") continue;
    settled.add(index);
    for (const coil of whole.coils) if (solution.pulledIn[coil.relay] === 1) pulledIn.get(coil.index)!.add(index);
    for (const { index: at, branch } of converters) if (solution.active[branch] === 1) working.get(at)!.add(index);
  }
  return { pulledIn, working, settled, samples, isSampled: group.size <= MOST_KEPT };
}

/** Solves combinations and remembers them: cones that lean on one another meet in many. Keeps to the budget of one drawing. */
export class SolveOnce {
  private readonly netlist: Netlist;
  /** By group and control numbers. */
  readonly tables = new Map<string, RelayTables>();
  private readonly known = new Map<string, Solution>();
  private workLeft = MOST_WORK;

  constructor(netlist: Netlist) {
    this.netlist = netlist;
  }

  /** Whether so many more combinations are within the budget; if so, they are spent. */
  affords(combinations: number): boolean {
    const work = combinations * this.netlist.elements.length;
    if (work > this.workLeft) return false;
    this.workLeft -= work;
    return true;
  }

  at(combination: Combination): Solution {
    const key = combination.join(" ");
    const before = this.known.get(key);
    if (before) return before;
    const solution = solveCombination(this.netlist, combination);
    if (this.known.size < MOST_REMEMBERED) this.known.set(key, solution);
    return solution;
  }
}

/** Solutions remembered at most. */
const MOST_REMEMBERED = 2 ** 12;

function unsolved(group: Group, isSampled: boolean): RelayTables {
  return { pulledIn: new Map(), working: new Map(), settled: TruthTable.full(group.size), samples: [], isSampled };
}
