import type { Document } from "../../core/document/index.ts";
import type { Pose } from "../../core/parts/index.ts";
import { type BoardMarks, PART_FLAG } from "./marks.ts";

/**
 * How symbols stand by what the analysis says, by part id; parts at rest are left out. `before` comes back when nothing is
 * different from it, so that an answer that moves no symbol redraws none.
 */
export function posesOf(
  marks: BoardMarks,
  document: Document,
  before: ReadonlyMap<string, Pose>,
): ReadonlyMap<string, Pose> {
  const poses = new Map<string, Pose>();
  document.parts.forEach(({ id }, index) => {
    const flags = marks.parts[index] ?? 0;
    const position = marks.positions[id];
    const pulledIn = (flags & PART_FLAG.pulledIn) !== 0;
    const on = (flags & PART_FLAG.on) !== 0;
    if (position === undefined && !pulledIn && !on) return;
    poses.set(id, { ...(position !== undefined && { position }), ...(pulledIn && { pulledIn }), ...(on && { on }) });
  });
  return isSame(poses, before) ? before : poses;
}

function isSame(a: ReadonlyMap<string, Pose>, b: ReadonlyMap<string, Pose>): boolean {
  if (a.size !== b.size) return false;
  for (const [id, pose] of a) {
    const other = b.get(id);
    if (other?.position !== pose.position || other?.pulledIn !== pose.pulledIn || other?.on !== pose.on) return false;
  }
  return true;
}
