import type { Edit } from "../document/index.ts";
import { sizeBeside, type Draft } from "./draft.ts";
import { snagKey } from "./sizing-snags.ts";

/** Takes copper away again, most copper first, wherever the next thinner wire raises no sizing snag. Ends when no wire can give any. */
export function shrink(draft: Draft): void {
  for (let changed = true; changed;) {
    changed = false;
    const byCopper = [...draft.wires].sort(
      (one, other) => (other.areaMm2 ?? 0) * (other.wire.metres ?? 1) - (one.areaMm2 ?? 0) * (one.wire.metres ?? 1),
    );
    for (const { wire } of byCopper) {
      const now = draft.wires.find((one) => one.wire.id === wire.id)!;
      const size = now.wire.size === undefined ? null : sizeBeside(draft, now, -1);
      if (size === null || !tryEdit(draft, { op: "set-wire", id: wire.id, change: { size } })) continue;
      changed = true;
    }
  }
}

/** Keeps the edit when it brings no sizing snag that was not there; takes it back otherwise. */
function tryEdit(draft: Draft, edit: Edit): boolean {
  const { document, study } = draft;
  const before = new Set(draft.snags().map(snagKey));
  draft.apply([edit]);
  if (draft.snags().every((snag) => before.has(snagKey(snag)))) return true;
  draft.document = document;
  draft.study = study;
  return false;
}
