import type { NetPart } from "../../netlist/index.ts";
import { formatQuantity } from "../../units/index.ts";
import type { Remedy, Study } from "../rule.ts";

/**
 * A part of the same sort rated for these amps and for the fuse ahead of it, so that it need not be changed twice. Empty for a part
 * that has no rating to choose.
 */
export function betterPart(study: Study, part: NetPart, amps: number): readonly Remedy[] {
  if (!("ratedA" in part.kind.settings)) return [];
  const ratedA = Math.max(Math.ceil(amps), largestGuardA(study, part));
  return [
    {
      id: "better-part",
      text: `Fit one rated ${formatQuantity(ratedA, "A")} or more`,
      edits: [{ op: "set-props", id: part.part.id, change: { ratedA } }],
    },
  ];
}

/** Largest known fuse that protects a wire on this part, amps; 0 where none does. */
export function largestGuardA({ standing }: Study, { terminals }: NetPart): number {
  const guards = terminals.flatMap(({ wires }) => wires.map((index) => standing.wires[index]!.guard));
  return Math.max(0, ...guards.map((guard) => guard?.ratingA ?? 0));
}
