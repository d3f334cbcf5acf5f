import type { Combination } from "../../netlist/index.ts";
import type { Solution } from "../../circuit/index.ts";
import type { Study } from "../rule.ts";

/** One solved combination of the controls. */
export interface Sample {
  readonly combination: Combination;
  readonly solution: Solution;
}

/** Every combination there is a solution of, the declared situations first (a person knows them by name). */
export function samplesOf({ situations, standing }: Study): readonly Sample[] {
  return [...situations, ...standing.samples];
}

/** Whether the samples are all there are, so that "in every combination" can be said of them. */
export function isComplete({ standing }: Study): boolean {
  return standing.isSampled;
}

/** How the controls stand, in words: "s1 is on and engine is running"; "everything is at rest". */
export function positionsInWords({ netlist }: Study, combination: Combination): string {
  const operated = netlist.controls.flatMap(({ id, positions }, at) =>
    combination[at] === 0 ? [] : [`${id} is ${positions[combination[at]!]}`],
  );
  return operated.length === 0 ? "everything is at rest" : operated.join(" and ");
}

/** Of combinations that show the same, the one with the fewest controls away from rest; `null` of none. */
export function simplestOf(samples: readonly Sample[]): Sample | null {
  return samples.reduce<Sample | null>(
    (one, other) => (one && operatedCount(one) <= operatedCount(other) ? one : other),
    null,
  );
}

function operatedCount({ combination }: Sample): number {
  return combination.reduce((count, position) => count + (position === 0 ? 0 : 1), 0);
}
