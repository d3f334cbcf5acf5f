import type { NetWire } from "../netlist/index.ts";
import { hasOpeningTimes } from "../reference/index.ts";
import { smallerDevice } from "./remedies/rerate-device.ts";
import { capacityWith, ohmWith, thickerSizes } from "./remedies/wire-sizes.ts";
import { formatQuantity, formatWireSize } from "../units/index.ts";
import { defineRule, type Finding, type Remedy, type Study } from "./rule.ts";
import { deviceAt, isLimitedOutput } from "./study/devices.ts";
import { isOver, isUnder } from "./study/limits.ts";
import { amount, nameOf, placeName } from "./study/words.ts";

/** Longest a short may last. */
const LIMIT_S = 5;
/** A device without published times counts as quick enough from this multiple of its rating on (about what blade fuses promise). */
const SURE_MULTIPLE = 2;

export const weakFault = defineRule({
  id: "weak-fault",
  level: "fix",
  about: "A short at the far end may not blow the fuse within 5 s, or heats the wire more than its insulation stands.",
  source:
    "Fuse makers' operating-time tables (ISO 8820-3); heat of a short by IEC 60364-4-43; 5 s is where that law ends",
  check: (study) => study.netlist.wires.flatMap((wire) => weak(study, wire)),
  say(finding, study) {
    const wire = nameOf(study, finding.at[0]!);
    const guard = placeName(finding, study, 1);
    const short = `a short at the end of ${wire} draws ${amount(finding, "faultA", "A")}`;
    const { clearsWithinS, heatRatio } = finding.measure;
    if (typeof clearsWithinS === "number" && clearsWithinS <= LIMIT_S && typeof heatRatio === "number") {
      return `${guard} lets ${formatQuantity(heatRatio, "")} times the heat through that the wire stands: ${short}.`;
    }
    const time =
      typeof clearsWithinS === "number" ? `may take ${formatQuantity(clearsWithinS, "s")}` : "may never blow";
    return `${guard} (${amount(finding, "ratingA", "A")}) ${time}: ${short}, and the wire cooks meanwhile.`;
  },
});

function weak(study: Study, wire: NetWire): Finding[] {
  const { guard, faultA, clearsWithinS, heatRatio } = study.standing.wires[wire.index]!;
  if (!guard?.ratingA || faultA === null || isLimitedOutput(study.netlist, guard.at)) return [];
  const gates = deviceAt(study.netlist, guard.at)?.spec.gates ?? null;
  const isSlow = hasOpeningTimes(gates, guard.ratingA)
    ? clearsWithinS === null || isOver(clearsWithinS, LIMIT_S)
    : isUnder(faultA, SURE_MULTIPLE * guard.ratingA);
  if (!isSlow && (heatRatio === null || !isOver(heatRatio, 1))) return [];
  return [
    {
      at: [wire.wire.id, guard.at],
      measure: { faultA, ratingA: guard.ratingA, clearsWithinS, heatRatio },
      remedies: isSlow
        ? [
            ...smallerDevice(study, guard.at, faultA / SURE_MULTIPLE),
            ...lowerResistance(study, wire, faultA, guard.ratingA),
          ]
        : smallerDevice(study, guard.at, wire.capacityA ?? 0),
    },
  ];
}

/** The thinnest wire with which a short draws enough, everything else on the way as it is. */
function lowerResistance(study: Study, wire: NetWire, faultA: number, ratingA: number): readonly Remedy[] {
  const { netlist, situations } = study;
  const sourceV = Math.max(...situations[0]!.feedV);
  const restOhm = sourceV / faultA - wire.ohm;
  const size = thickerSizes(netlist, wire).find((each) => {
    const ohm = ohmWith(netlist, wire, each);
    return (
      ohm !== null &&
      capacityWith(netlist, wire, each) !== null &&
      sourceV / (restOhm + ohm) >= SURE_MULTIPLE * ratingA * 1.05
    );
  });
  if (!wire.known || size === undefined) return [];
  const text = `Make ${nameOf(study, wire.wire.id)} ${formatWireSize(size)}, so that a short draws enough`;
  return [{ id: "thicker-wire", text, edits: [{ op: "set-wire", id: wire.wire.id, change: { size } }] }];
}
