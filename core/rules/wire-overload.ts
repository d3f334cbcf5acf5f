import { thickerWire } from "./remedies/thicker-wire.ts";
import { defineRule } from "./rule.ts";
import { isOver } from "./study/limits.ts";
import { amount, placeName, situationOf } from "./study/words.ts";
import { worstOf } from "./study/worst.ts";

export const wireOverload = defineRule({
  id: "wire-overload",
  level: "stop",
  about: "A wire carries more amps than it can without overheating.",
  source: "Capacity table named in the report; ambient by the heat balance of IEC 60287, bundles by 33 CFR 183.425",
  check: (study) =>
    study.netlist.wires.flatMap((wire) => {
      const { capacityA } = wire;
      const worst = worstOf(study, ({ wires }) => Math.abs(wires[wire.wire.id]!.amps ?? 0));
      if (capacityA === null || !worst || !isOver(worst.value, capacityA)) return [];
      return [
        {
          // A starter or winch main works for moments.
          ...(wire.wire.main === undefined ? {} : { level: "advice" }),
          at: [wire.wire.id],
          measure: { amps: worst.value, capacityA, situation: worst.situation.id },
          remedies: thickerWire(study, wire, worst.value),
        },
      ];
    }),
  say: (finding, study) =>
    `${placeName(finding, study)} carries ${amount(finding, "amps", "A")} ${situationOf(finding, study)}, but stands only ${amount(finding, "capacityA", "A")}: its insulation cooks.`,
});
