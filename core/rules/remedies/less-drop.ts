import type { SituationReading } from "../../readings/index.ts";
import { formatWireSize } from "../../units/index.ts";
import type { Remedy, Study } from "../rule.ts";
import type { Consumer } from "../study/shared-returns.ts";
import { supplyWires } from "../study/supply-path.ts";
import { nameOf } from "../study/words.ts";
import { capacityWith, ohmWith, thickerSizes } from "./wire-sizes.ts";

/**
 * Thicker wires on the way to a consumer and back until `savedV` less is lost, reckoned at the present amps: the one that loses most
 * grows first. Empty where no size sold is enough.
 */
export function lessDrop(
  study: Study,
  use: Consumer,
  situation: SituationReading,
  savedV: number,
  side: "both" | "return" = "both",
): readonly Remedy[] {
  const { netlist } = study;
  const wires = supplyWires(study, use, situation, side)
    .filter(({ known }) => known)
    .map((wire) => {
      const amps = Math.abs(situation.solution.branchA[wire.branch]!);
      const sizes = thickerSizes(netlist, wire).filter((size) => capacityWith(netlist, wire, size) !== null);
      return { wire, amps, sizes, chosen: -1, lostV: amps * wire.ohm };
    });
  // A tenth more than asked for: with more volts some loads draw other amps.
  for (let missingV = savedV * 1.1; missingV > 0;) {
    const next = wires
      .filter(({ chosen, sizes }) => chosen + 1 < sizes.length)
      .toSorted((a, b) => b.lostV - a.lostV)[0];
    if (!next) return [];
    const ohm = ohmWith(netlist, next.wire, next.sizes[++next.chosen]!) ?? next.wire.ohm;
    missingV -= next.lostV - next.amps * ohm;
    next.lostV = next.amps * ohm;
  }
  const changed = wires.filter(({ chosen }) => chosen >= 0);
  if (changed.length === 0) return [];
  const words = changed.map(
    ({ wire, sizes, chosen }) => `${nameOf(study, wire.wire.id)} ${formatWireSize(sizes[chosen]!)}`,
  );
  return [
    {
      id: "thicker-wires",
      text: `Make ${words.join(", ")}`,
      edits: changed.map(({ wire, sizes, chosen }) => ({
        op: "set-wire",
        id: wire.wire.id,
        change: { size: sizes[chosen]! },
      })),
    },
  ];
}
