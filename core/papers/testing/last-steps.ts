import { formatNumber } from "../../units/index.ts";
import type { PaperSource } from "../paper.ts";
import type { TestStep } from "./test-step.ts";

/** Key-off drain that is normal at most, amps: workshop practice, 50 mA (rule `rest-drain`). */
const MOST_DRAIN_A = 0.05;

/** Heat under load. Common practice, no source. */
export function heatStep(): TestStep {
  return {
    title: "Heat",
    set: "everything on for 15 minutes",
    rows: [
      {
        red: "fuse holders, relays, plugs, studs, joints",
        black: "by hand, or with a thermometer",
        meter: "°C",
        expected: "warm at most",
        pass: "a hand can rest on it",
        look: "the joint that is hotter than its neighbours",
      },
    ],
  };
}

export function drainStep({ report }: PaperSource): TestStep {
  const { restDrainA } = report.summary;
  const expected = restDrainA === null ? "not known" : `${formatNumber(restDrainA * 1000)} mA`;
  return {
    title: "Drain",
    set: "key out, everything off, vehicle asleep (10 to 60 minutes)",
    rows: [
      {
        red: "battery negative lead",
        black: "battery negative post, in series",
        meter: "mA",
        expected: `${expected} more than before`,
        pass:
          restDrainA !== null && restDrainA > MOST_DRAIN_A
            ? "no more than expected"
            : `${MOST_DRAIN_A * 1000} mA in all, no more than before`,
        look: "pull fuses one by one until it falls",
      },
    ],
  };
}

/** After anything of the vehicle was tapped. */
export function codesStep({ netlist }: PaperSource): TestStep {
  const feeds = netlist.parts.filter(({ kind, settings }) => kind.facts?.(settings).feed !== undefined);
  const row = {
    red: "code reader, after a road test",
    black: "",
    meter: "",
    expected: "no new codes",
    pass: "none",
    look: "a watched lamp wire, a poor tap",
  };
  return { title: "Fault codes", set: "a wire of the vehicle was tapped", rows: feeds.length === 0 ? [] : [row] };
}
