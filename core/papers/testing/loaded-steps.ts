import type { NetElement, NetTerminal } from "../../netlist/index.ts";
import {
  conductionOf,
  deviceAmps,
  deviceRows,
  usersOf,
  workingSituations,
  type User,
  type WorkingSituation,
} from "../lists/index.ts";
import type { PaperSource } from "../paper.ts";
import { ampsWords, partName, terminalName } from "../words/index.ts";
import { voltsText, type TestRow, type TestStep } from "./test-step.ts";

/** A drop passes up to this much over the solved one, and by this share of it: meters and terminals differ. Our own choice. */
const DROP_SLACK_V = 0.05;
const DROP_SLACK_SHARE = 0.25;
/** Clamp readings within this of the sheet pass: field practice, 10 to 15 %. */
const AMPS_SLACK_SHARE = 0.15;
/** Less current makes no drop worth reading. */
const LEAST_A = 0.1;

/** Loaded drops in each situation: feed, each device and contact on the way, return; the whole circuit is their sum. */
export function dropSteps(source: PaperSource): TestStep[] {
  return workingSituations(source).map((situation) => ({
    title: `Loaded drop: ${situation.name}`,
    set: `${situation.set}; everything working`,
    rows: [
      ...usersOf(source).flatMap((user) => loadDrops(user, situation, source)),
      ...source.netlist.elements.flatMap((element) => elementDrop(element, situation)),
    ],
  }));
}

/** Amps through each device in each situation. */
export function ampsSteps(source: PaperSource): TestStep[] {
  return workingSituations(source).map(({ id, name, set, readings }) => ({
    title: `Amps: ${name}`,
    set,
    rows: deviceRows(source).flatMap((device): TestRow[] => {
      const { amps } = deviceAmps(device, readings);
      if (amps === null || Math.abs(amps) < LEAST_A) return [];
      const size = Math.abs(amps);
      const [least, most] = [1 - AMPS_SLACK_SHARE, 1 + AMPS_SLACK_SHARE].map((share) => (size * share).toFixed(1));
      return [
        {
          red: `clamp round the feed of ${device.name}`,
          black: "",
          meter: "A",
          expected: ampsWords(size),
          pass: `${least} to ${most} A`,
          look: "a load missing, or one too many",
          point: {
            situation: id,
            meter: "A",
            red: device.address,
            expected: size,
            least: Number(least),
            most: Number(most),
          },
        },
      ];
    }),
  }));
}

function loadDrops({ part, element, plus, minus }: User, situation: WorkingSituation, source: PaperSource): TestRow[] {
  const { readings } = situation;
  if (readings.parts[part.part.id]?.on !== true) return [];
  const start = conductionOf(source, situation.id).wayTo(element.a)[0]?.from;
  const pole = source.netlist.elements.find(({ spec, a }) => spec.type === "source" && a === start);
  const poleAt = (node: number | undefined) => pole?.part.terminals.find((terminal) => terminal.node === node);
  const [feed, back] = [poleAt(pole?.a), poleAt(pole?.b)];
  const name = partName(part.part);
  return [
    ...(feed && plus ? drop(feed, plus, situation, `feed of ${name}: joints, contacts, then size`) : []),
    ...(back && minus ? drop(minus, back, situation, `return of ${name}: studs and joints first`) : []),
  ];
}

function elementDrop({ spec, part }: NetElement, situation: WorkingSituation): TestRow[] {
  if (spec.type !== "protection" && spec.type !== "contact") return [];
  const reading = situation.readings.parts[part.part.id];
  const way = reading?.ways?.[(spec.type === "protection" ? spec.terminal : "") || spec.b] ?? reading;
  if (typeof way?.amps !== "number" || Math.abs(way.amps) < LEAST_A) return [];
  const ends = [spec.a, spec.b].map((end) => part.terminals.find(({ terminal }) => terminal.name === end));
  const [from, to] = way.amps > 0 ? ends : ends.toReversed();
  return from && to ? drop(from, to, situation, `holder, blades or contacts of ${partName(part.part)}`) : [];
}

function drop(from: NetTerminal, to: NetTerminal, { id, readings }: WorkingSituation, look: string): TestRow[] {
  const [high, low] = [from, to].map(({ address }) => readings.terminals[address]?.volts);
  if (typeof high !== "number" || typeof low !== "number") return [];
  const dropV = high - low;
  const limitV = dropV + Math.max(DROP_SLACK_V, dropV * DROP_SLACK_SHARE);
  return [
    {
      red: terminalName(from),
      black: terminalName(to),
      meter: "V",
      expected: voltsText(dropV),
      pass: `up to ${voltsText(limitV)}`,
      look,
      point: {
        situation: id,
        meter: "V",
        red: from.address,
        black: to.address,
        expected: dropV,
        least: null,
        most: Number(limitV.toFixed(2)),
      },
    },
  ];
}
