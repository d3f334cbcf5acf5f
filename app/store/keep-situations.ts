import { applyEdits, type Document, type Edit, type Situation } from "../../core/document/index.ts";
import { controlsOf } from "./controls-of.ts";

/**
 * The edits, followed by one that takes out of the saved situations every control and position these edits do away with: a
 * situation that sets what is not there would make the file unreadable.
 */
export function keepSituations(document: Document, edits: readonly Edit[]): readonly Edit[] {
  const situations = document.situations ?? [];
  if (!situations.some((situation) => situation.set !== undefined)) return edits;
  const after = applyEdits(document, edits);
  const controls = new Map(controlsOf(after).map((control) => [control.id, control.positions]));
  const kept = (after.situations ?? []).map((situation) => withKnown(situation, controls));
  const isUnchanged = kept.every((situation, index) => situation === after.situations?.[index]);
  return isUnchanged ? edits : [...edits, { op: "set-situations", situations: kept }];
}

function withKnown(situation: Situation, controls: ReadonlyMap<string, readonly string[]>): Situation {
  const entries = Object.entries(situation.set ?? {});
  const known = entries.filter(([id, position]) => controls.get(id)?.includes(position));
  return known.length === entries.length ? situation : { ...situation, set: Object.fromEntries(known) };
}
