import type { Netlist } from "../netlist/index.ts";
import { digitsOf } from "./groups.ts";
import { TruthTable } from "./truth-table.ts";

/** One way a condition can hold: these controls in these positions, the rest anywhere. Positions are indices. */
type Case = ReadonlyMap<number, ReadonlySet<number>>;

/** Above this many combinations of the controls that matter, the words name the controls only. */
const MOST_WORDED = 2 ** 12;

/**
 * The shortest condition in words for "one of `holds`" over a group's controls: "s1 is on and engine is running, or ff1 is on".
 * Combinations outside `settled` may go either way. "always" and "never" at the ends.
 */
export function conditionInWords(
  netlist: Netlist,
  controls: readonly number[],
  holds: TruthTable,
  settled: TruthTable,
): string {
  const truth = holds.and(settled);
  if (truth.isEmpty()) return "never";
  if (truth.equals(settled)) return "always";
  const small = onlyControlsThatMatter(netlist, controls, truth, settled);
  const plain = oneCase(netlist, small, true) ?? otherwise(netlist, small, oneCase(netlist, small, false));
  if (plain) return inWords(netlist, small.controls, plain);
  if (small.values.length > MOST_WORDED) {
    return `in some positions of ${small.controls.map((control) => netlist.controls[control]!.id).join(", ")}`;
  }
  return inWords(netlist, small.controls, mergeCases(shortestCases(netlist, small)));
}

function inWords(netlist: Netlist, controls: readonly number[], cases: readonly Case[]): string {
  const firstControl = (one: Case) => Math.min(...one.keys());
  return cases
    .toSorted((one, other) => firstControl(one) - firstControl(other))
    .map((one) => caseInWords(netlist, controls, one))
    .join(", or ");
}

/** The one case that is all combinations of this `value` and none of the other, as of a row of switches; `null`: it takes several. */
function oneCase(netlist: Netlist, { controls, values }: SmallTruth, value: boolean): Case[] | null {
  const seen = controls.map(() => new Set<number>());
  let count = 0;
  values.forEach((here, index) => {
    if (here === !value) return;
    count++;
    digitsOf(netlist, controls, index).forEach((digit, at) => seen[at]!.add(digit));
  });
  if (values.includes(null) || seen.reduce((product, { size }) => product * size, 1) !== count) return null;
  return [new Map(seen.entries())];
}

/** Everything that a single case leaves out, as of switches side by side: any of its controls elsewhere. */
function otherwise(netlist: Netlist, { controls }: SmallTruth, cases: readonly Case[] | null): Case[] | null {
  const [only] = cases ?? [];
  if (!only) return null;
  return [...only].map(([at, positions]) => {
    const all = [...netlist.controls[controls[at]!]!.positions.keys()];
    return new Map([[at, new Set(all.filter((position) => !positions.has(position)))]]);
  });
}

/** A condition over few controls: for each combination true, false, or null where it does not matter. */
interface SmallTruth {
  readonly controls: readonly number[];
  readonly values: readonly (boolean | null)[];
}

function onlyControlsThatMatter(
  netlist: Netlist,
  controls: readonly number[],
  truth: TruthTable,
  settled: TruthTable,
): SmallTruth {
  const strides: number[] = [];
  controls.reduce((stride, control) => {
    strides.push(stride);
    return stride * netlist.controls[control]!.positions.length;
  }, 1);
  let kept = [...controls.keys()].filter((at) =>
    matters(truth, settled, strides[at]!, netlist.controls[controls[at]!]!.positions.length),
  );
  // Where some combinations say nothing, more controls may be let go of than those that never matter.
  if (!settled.equals(TruthTable.full(settled.size))) {
    for (const at of kept) {
      const without = kept.filter((other) => other !== at);
      if (project(netlist, controls, strides, without, truth, settled)) kept = without;
    }
  }
  return {
    controls: kept.map((at) => controls[at]!),
    values: project(netlist, controls, strides, kept, truth, settled)!,
  };
}

/** Whether moving this control alone ever changes the truth, or whether it is known. */
function matters(truth: TruthTable, settled: TruthTable, stride: number, count: number): boolean {
  for (let index = 0; index < truth.size; index++) {
    const atRest = index - (Math.floor(index / stride) % count) * stride;
    if (truth.has(index) !== truth.has(atRest) || settled.has(index) !== settled.has(atRest)) return true;
  }
  return false;
}

/** The truth over the `kept` controls alone, or null when it also hangs on another one. */
function project(
  netlist: Netlist,
  controls: readonly number[],
  strides: readonly number[],
  kept: readonly number[],
  truth: TruthTable,
  settled: TruthTable,
): (boolean | null)[] | null {
  const count = (at: number) => netlist.controls[controls[at]!]!.positions.length;
  const values: (boolean | null)[] = Array.from(
    { length: kept.reduce((product, at) => product * count(at), 1) },
    () => null,
  );
  for (let index = 0; index < truth.size; index++) {
    if (!settled.has(index)) continue;
    let small = 0;
    let stride = 1;
    for (const at of kept) {
      small += (Math.floor(index / strides[at]!) % count(at)) * stride;
      stride *= count(at);
    }
    const value = truth.has(index);
    if (values[small] !== null && values[small] !== value) return null;
    values[small] = value;
  }
  return values;
}

/** Cases with as few controls each as can be, found by letting go of controls while the condition still holds. */
function shortestCases(netlist: Netlist, { controls, values }: SmallTruth): Case[] {
  const cases: Case[] = [];
  values.forEach((value, index) => {
    const digits = digitsOf(netlist, controls, index);
    if (value !== true || cases.some((one) => covers(one, digits))) return;
    const fixed = new Map(digits.map((digit, at): [number, ReadonlySet<number>] => [at, new Set([digit])]));
    cases.push(smallestCase(netlist, controls, values, fixed));
  });
  return cases.filter((one, at) => !isRedundant(netlist, controls, values, cases, one, at));
}

/** Tries to drop each control, then each pair in another order, keeping the shortest case that never covers a false combination. */
function smallestCase(netlist: Netlist, controls: readonly number[], values: SmallTruth["values"], fixed: Case): Case {
  let best = fixed;
  for (const first of fixed.keys()) {
    const order = [first, ...[...fixed.keys()].filter((at) => at !== first)];
    let one = fixed;
    for (const at of order) {
      const wider = new Map([...one].filter(([control]) => control !== at));
      if (holdsThroughout(netlist, controls, values, wider)) one = wider;
    }
    if (one.size < best.size) best = one;
  }
  return best;
}

function holdsThroughout(
  netlist: Netlist,
  controls: readonly number[],
  values: SmallTruth["values"],
  one: Case,
): boolean {
  return values.every((value, index) => value !== false || !covers(one, digitsOf(netlist, controls, index)));
}

function covers(one: Case, digits: readonly number[]): boolean {
  return [...one].every(([at, positions]) => positions.has(digits[at]!));
}

function isRedundant(
  netlist: Netlist,
  controls: readonly number[],
  values: SmallTruth["values"],
  cases: readonly Case[],
  one: Case,
  at: number,
): boolean {
  const others = cases.filter((_, other) => other < at);
  const later = cases.slice(at + 1);
  return (
    values.every((value, index) => {
      const digits = digitsOf(netlist, controls, index);
      return (
        value !== true || !covers(one, digits) || [...others, ...later].some((other) => covers(other, digits)) === true
      );
    }) && later.length > 0
  );
}

/** Cases alike but for the position of one control become one: "key is accessory or on". */
function mergeCases(cases: readonly Case[]): Case[] {
  const merged: Case[] = [];
  for (const one of cases) {
    const at = merged.findIndex((other) => differingControl(one, other) !== null);
    if (at < 0) {
      merged.push(one);
      continue;
    }
    const control = differingControl(one, merged[at]!)!;
    const both = new Set([...merged[at]!.get(control)!, ...one.get(control)!]);
    merged[at] = new Map([...merged[at]!, [control, both]]);
  }
  return merged.length < cases.length ? mergeCases(merged) : merged;
}

/** The one control in which two cases over the same controls differ, or null. */
function differingControl(one: Case, other: Case): number | null {
  if (one.size !== other.size || [...one.keys()].some((control) => !other.has(control))) return null;
  const differing = [...one].filter(([control, positions]) => {
    const others = other.get(control)!;
    return positions.size !== others.size || [...positions].some((position) => !others.has(position));
  });
  return differing.length === 1 ? differing[0]![0] : null;
}

function caseInWords(netlist: Netlist, controls: readonly number[], one: Case): string {
  return [...one]
    .sort(([first], [second]) => first - second)
    .map(([at, positions]) => {
      const control = netlist.controls[controls[at]!]!;
      const names = [...positions]
        .sort((first, second) => first - second)
        .map((position) => control.positions[position]!);
      const others = control.positions.filter((name) => !names.includes(name));
      return others.length === 1 && names.length > 1
        ? `${control.id} is not ${others[0]}`
        : `${control.id} is ${names.join(" or ")}`;
    })
    .join(" and ");
}
