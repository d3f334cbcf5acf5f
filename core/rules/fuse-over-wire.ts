import type { NetWire } from "../netlist/index.ts";
import { fuseAtSource } from "./remedies/fuse-at-source.ts";
import { smallerDevice } from "./remedies/rerate-device.ts";
import { sizeFor } from "./remedies/wire-sizes.ts";
import { thickerWire } from "./remedies/thicker-wire.ts";
import { defineRule, type Finding, type Remedy, type Study } from "./rule.ts";
import { isOver } from "./study/limits.ts";
import { routeTo } from "./study/route.ts";
import { amount, nameOf, placeName } from "./study/words.ts";

export const fuseOverWire = defineRule({
  id: "fuse-over-wire",
  level: "stop",
  about:
    "The fuse that protects a wire is larger than the wire can stand, also where a thick wire steps down to a thin one.",
  source: "Capacity table named in the report (a vehicle maker's largest fuse by wire area, or 33 CFR 183.425 Table 5)",
  check: (study) => study.netlist.wires.flatMap((wire) => overguarded(study, wire)),
  say(finding, study) {
    const wire = nameOf(study, finding.at[0]!);
    const guard = placeName(finding, study, 1);
    return `${guard} lets ${amount(finding, "ratingA", "A")} through, but ${wire} stands only ${amount(finding, "capacityA", "A")}: it overheats before the fuse blows.`;
  },
});

/** Judged for each source by itself; told once for the wire, with the largest device. */
function overguarded(study: Study, wire: NetWire): Finding[] {
  const { capacityA } = wire;
  if (capacityA === null) return [];
  const over = study.standing.wires[wire.index]!.ways.flatMap(({ guard, source }) =>
    guard?.ratingA ? [{ at: guard.at, ratingA: guard.ratingA, source }] : [],
  )
    .filter(({ ratingA }) => isOver(ratingA, capacityA))
    .sort((one, other) => other.ratingA - one.ratingA);
  const [worst] = over;
  if (!worst) return [];
  return [
    {
      at: [wire.wire.id, ...new Set(over.flatMap(({ at, source }) => [at, source]))],
      measure: { ratingA: worst.ratingA, capacityA },
      remedies: [
        ...smallerDevice(study, worst.at, capacityA),
        ...thickerWire(study, wire, worst.ratingA),
        ...fuseAtStep(study, wire, worst.source, worst.ratingA),
      ],
    },
  ];
}

/** A fuse of its own where the thin wire begins, on a lead thick enough for the large one. */
function fuseAtStep(study: Study, wire: NetWire, source: string, ratingA: number): readonly Remedy[] {
  const step = routeTo(study.netlist, source, wire, true)?.at(-1);
  const leadSize = sizeFor(study.netlist, wire, ratingA);
  return step && leadSize !== null ? fuseAtSource(study, step, [], { leadSize }) : [];
}
