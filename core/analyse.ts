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
  const netlist = buildNetlist(document);
  const situations = readSituations(netlist);
  const standing = standingOf(netlist);
  const study: Study = {
    netlist,
    situations,
    standing,
    solveWithout: (wires, situation) => solveWithout(netlist, wires, situation.combination),
  };
  const snags = applyRules(study);
  return { study, report: buildReport(netlist, situations, standing, snags) };
}
