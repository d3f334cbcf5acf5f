import type { Solution } from "../circuit/index.ts";
import type { Edit } from "../document/index.ts";
import type { Netlist } from "../netlist/index.ts";
import type { Standing } from "../positions/index.ts";
import type { SituationReading } from "../readings/index.ts";

/** Everything a rule may look at. It changes nothing. */
export interface Study {
  readonly netlist: Netlist;
  /** `rest` first, then the declared situations. */
  readonly situations: readonly SituationReading[];
  readonly standing: Standing;
  /** The operating point of a situation with some wires (by number) cut. */
  solveWithout(wires: readonly number[], situation: SituationReading): Solution;
}

/** `stop`: do not power up. `fix`: put right before use. `cant-check`: something is missing. */
export type Level = "stop" | "fix" | "advice" | "cant-check";

/** One press puts it right, one undo takes it back. */
export interface Remedy {
  readonly id: string;
  readonly text: string;
  /** Empty for an advice the program can't carry out on the drawing. */
  readonly edits: readonly Edit[];
}

/** What a rule found, as data; `say` puts it in words. */
export interface Finding {
  /** Overrides the rule's own level, e.g. "cant-check" when a rating is missing. */
  readonly level?: Level;
  /** Terminal addresses, wire ids or part ids; the first is the place shown. */
  readonly at: readonly string[];
  /** Numbers behind it, units in the names. `null`: unknown. */
  readonly measure: Readonly<Record<string, number | string | null>>;
  readonly remedies: readonly Remedy[];
}

export interface Rule {
  readonly id: string;
  readonly level: Level;
  /** What it means, for the help page; one sentence. */
  readonly about: string;
  /** Where its limit comes from; "common practice, no source" where that is so. */
  readonly source: string;
  check(study: Study): readonly Finding[];
  /** What happens, where, by how much, in outcome words. */
  say(finding: Finding, study: Study): string;
}

/** A finding in full: what the report lists and a person reads. */
export interface Snag {
  readonly rule: string;
  readonly level: Level;
  readonly at: readonly string[];
  readonly measure: Finding["measure"];
  readonly text: string;
  readonly remedies: readonly Remedy[];
}

/** Gives a rule its type; every file of a rule is one call of this. */
export function defineRule(rule: Rule): Rule {
  return rule;
}
