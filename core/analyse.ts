import type { Document } from "./document/index.ts";
import { buildNetlist } from "./netlist/index.ts";
import { standingOf } from "./positions/index.ts";
import { readSituations, solveWithout } from "./readings/index.ts";
import { buildReport, type Report } from "./report/index.ts";
import { applyRules, type Study } from "./rules/index.ts";

/** A drawing, what was found out about it, and the report that says so. */
export interface Analysis {
  /** What the rules looked at: the net, each situation's readings, and what holds in every position of the controls. */
  readonly study: Study;
  readonly report: Report;
}

/**
 * The front door: everything Groundstrap knows about a drawing.
 *
 *   document ── buildNetlist ──> net of numbered nodes and elements
 *   net ── readSituations ──> volts, amps and states at rest and in each declared situation (solver)
 *   net ── standingOf ──> what is hot, guarded, and how hard a short would be, over every combination of the controls
 *   all of it ── applyRules ──> snags, each with its remedies
 *
 * Pure: the same document always gives the same analysis, and nothing is changed. The document must come from
 * `readCircuitFile` or from edits of such a one; anything else may throw RangeError.
 */
export function analyse(document: Document): Analysis {
  const study = studyOf(document);
  return { study, report: buildReport(study.netlist, study.situations, study.standing, applyRules(study)) };
}

/** The first three steps of the way: what the rules look at, before any rule has looked. */
export function studyOf(document: Document): Study {
  const netlist = buildNetlist(document);
  return {
    netlist,
    situations: readSituations(netlist),
    standing: standingOf(netlist),
    solveWithout: (wires, situation) => solveWithout(netlist, wires, situation.combination),
  };
}
