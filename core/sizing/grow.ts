import type { Edit } from "../document/index.ts";
import type { NetWire } from "../netlist/index.ts";
import type { Snag } from "../rules/index.ts";
import { deviceAt, rerating, sizeBeside, type Draft } from "./draft.ts";
import { bestForDrop } from "./drop-path.ts";
import { snagKey } from "./sizing-snags.ts";

/** A snag that no size sold, or none we may choose, can clear. */
export interface Unfit {
  readonly at: string;
  readonly rule: string;
  readonly text: string;
}

/** More rounds than any drawing needs: every wire could grow through every size. */
const MOST_ROUNDS = 400;

/** Enlarges what the snags name, step by step, until none is left that a size can clear. Gives those that remain. */
export function grow(draft: Draft): Unfit[] {
  const hopeless = new Map<string, Unfit>();
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const snags = draft.snags().filter((snag) => !hopeless.has(snagKey(snag)));
    if (snags.length === 0) break;
    const edits = new Map<string, readonly Edit[]>();
    for (const snag of snags) {
      const step = stepFor(draft, snag);
      if (!step) hopeless.set(snagKey(snag), { at: snag.at[0] ?? "", rule: snag.rule, text: snag.text });
      else if (!edits.has(step.id)) {
        edits.set(step.id, step.edits);
        draft.note(step.id, snag.text);
      }
    }
    if (edits.size > 0) draft.apply([...edits.values()].flat());
  }
  const left = new Set(draft.snags().map(snagKey));
  return [...hopeless].filter(([key]) => left.has(key)).map(([, unfit]) => unfit);
}

interface Step {
  readonly id: string;
  readonly edits: readonly Edit[];
}

function stepFor(draft: Draft, snag: Snag): Step | null {
  const at = snag.at[0] ?? "";
  switch (snag.rule) {
    case "fuse-over-wire":
    case "wire-overload":
    case "return-small":
    case "weak-fault":
      return (
        thicker(
          draft,
          draft.wires.find(({ wire }) => wire.id === at),
        ) ?? byRemedy(draft, snag)
      );
    case "fuse-loaded":
    case "fuse-blows":
    case "start-surge":
      return largerDevice(draft, at) ?? byRemedy(draft, snag);
    case "drop-high":
    case "ground-drop":
    case "wrong-voltage":
      return thicker(draft, bestForDrop(draft, at)) ?? byRemedy(draft, snag);
    default:
      return byRemedy(draft, snag);
  }
}

function thicker(draft: Draft, wire: NetWire | undefined): Step | null {
  const size = wire ? sizeBeside(draft, wire, 1) : null;
  return wire && size !== null
    ? { id: wire.wire.id, edits: [{ op: "set-wire", id: wire.wire.id, change: { size } }] }
    : null;
}

function largerDevice(draft: Draft, at: string): Step | null {
  const device = deviceAt(draft, at);
  const edit = device ? rerating(device, (device.spec.ratingA ?? 0) + 0.01) : null;
  return edit ? { id: at, edits: [edit] } : null;
}

/** What the rule itself offers, where that only changes sizes we may choose. */
function byRemedy(draft: Draft, snag: Snag): Step | null {
  const remedy = snag.remedies.find(({ edits }) => edits.length > 0 && draft.allows(edits));
  return remedy ? { id: snag.at[0] ?? "", edits: remedy.edits } : null;
}
