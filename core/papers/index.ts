import { drawing } from "./drawing.ts";
import type { Paper } from "./paper.ts";

export { circuitInSvg } from "./circuit-in-svg.ts";
export * from "./paper.ts";

/** Every paper, in the order a job needs them. */
export const papers: readonly Paper[] = [drawing];

/** The paper of this kind; `null` for a kind that is none. */
export function paperOf(kind: string): Paper | null {
  return papers.find((paper) => paper.kind === kind) ?? null;
}
