import { formatNumber } from "../../units/index.ts";
import type { NetWire } from "../../netlist/index.ts";
import { ampsWords, partName, terminalName, wireName } from "../words/index.ts";
import { deviceAmps, deviceRows, type DeviceRow } from "../lists/index.ts";
import type { PaperSource } from "../paper.ts";
import type { TestRow, TestStep } from "./test-step.ts";

/** Leads included, under this a wire counts as whole. Common practice, no source. */
const WHOLE_WIRE_OHM = 0.5;

/** What is proved before the battery is on: every wire whole, nothing shorted; then first power through a small fuse. */
export function deadSteps(source: PaperSource): TestStep[] {
  return [
    {
      title: "Dead checks",
      set: "battery negative off, every fuse out; tug both ends of each wire; ohms include the leads",
      rows: [...source.netlist.wires.map(wholeRow), ...shortRows(source)],
    },
    {
      title: "First power",
      set: "battery negative on, everything off, fuses in one by one",
      rows: firstPowerRows(source),
    },
  ];
}

function wholeRow({ wire, from, to, ohm }: NetWire): TestRow {
  return {
    red: terminalName(from),
    black: terminalName(to),
    meter: "Ω",
    expected: "0.0 Ω",
    pass: `under ${WHOLE_WIRE_OHM} Ω`,
    look: `crimps of ${wireName(wire)}`,
    point: {
      situation: "dead",
      meter: "ohm",
      red: from.address,
      black: to.address,
      expected: ohm,
      least: null,
      most: WHOLE_WIRE_OHM,
    },
  };
}

/** From the load side of each device to battery negative: coils and lamps may show, a short may not. */
function shortRows(source: PaperSource): TestRow[] {
  return deviceRows(source).flatMap((device): TestRow[] => {
    if (device.guards.length === 0) return [];
    return [
      {
        red: `load side of ${device.name}`,
        black: "battery negative lead",
        meter: "Ω",
        expected: restResistance(device),
        pass: "over 1 Ω: no short",
        look: `a rubbed-through wire after ${device.name}`,
      },
    ];
  });
}

/** Words for what a meter may meet there; LED lamps and electronics read oddly, so they are only named. */
function restResistance({ guards }: DeviceRow): string {
  const coils = new Set(
    guards
      .flatMap(({ from, to }) => [from.part, to.part])
      .flatMap(({ part, elements }) =>
        elements.flatMap(({ spec }) =>
          spec.type === "coil" ? [`${formatNumber(spec.ohm)} Ω through ${partName(part)}`] : [],
        ),
      ),
  );
  return coils.size === 0 ? "open, or loads only" : `open, or ${[...coils].join(", ")} if switched`;
}

function firstPowerRows(source: PaperSource): TestRow[] {
  const rest = source.report.situations["rest"];
  return deviceRows(source).map((device): TestRow => {
    const amps = rest ? deviceAmps(device, rest).amps : null;
    return {
      red: `in place of ${device.name}`,
      black: "a 3 to 5 A fuse, or a test lamp",
      meter: "A",
      expected: amps === null ? "not known" : ampsWords(Math.abs(amps)),
      pass: amps === null || Math.abs(amps) < 0.05 ? "nothing draws, lamp dark" : "no more than expected",
      look: `what hangs on ${device.name}`,
    };
  });
}
