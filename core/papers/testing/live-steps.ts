import type { NetPart, NetTerminal } from "../../netlist/index.ts";
import {
  conductionOf,
  isHotAtRest,
  type User,
  type WorkingSituation,
  usersOf,
  wireGroups,
  workingSituations,
} from "../lists/index.ts";
import { unbroken } from "../layout/index.ts";
import type { ReportSituation } from "../../report/index.ts";
import type { PaperSource } from "../paper.ts";
import { partName, terminalName } from "../words/index.ts";
import { voltsText, type TestRow, type TestStep } from "./test-step.ts";

/** A reading this near the solved volts passes: meters, batteries and charge differ. Our own choice. */
const NEAR_V = 0.5;

/** More than this is no longer nothing. Common practice, no source. */
const DEAD_V = 0.1;

/** Across what is off. Common practice, no source. */
const OFF_V = 0.5;

/** Hot at rest: volts where the map says live, nothing elsewhere. */
export function restStep(source: PaperSource): TestStep {
  const { report } = source;
  const rows = wireGroups(source).flatMap((group): TestRow[] => {
    const spot = group.find(({ wires }) => wires.length === 0) ?? group[0]!;
    const standing = report.terminals[spot.address];
    const volts = report.situations["rest"]?.terminals[spot.address]?.volts ?? null;
    if (!standing || standing.hot === "never" || spot.cover === "cavity" || volts === null) return [];
    const isHot = isHotAtRest(standing.hot);
    return [
      {
        red: terminalName(spot),
        black: "battery negative",
        meter: "V",
        expected: voltsText(volts),
        pass: isHot ? within(volts) : `under ${DEAD_V} V`,
        look: isHot ? feederOf(spot, source) : "a wire on the wrong pin, a welded contact",
        point: {
          situation: "rest",
          meter: "V",
          red: spot.address,
          expected: volts,
          ...(isHot ? nearV(volts) : { least: null, most: DEAD_V }),
        },
      },
    ];
  });
  return { title: "Hot at rest", set: "battery on, every fuse in, key out, everything off", rows };
}

/** Function table: what is on and what stays off, at rest and in each situation. */
export function functionSteps(source: PaperSource): TestStep[] {
  const rest = source.report.situations["rest"];
  const cases = [
    ...(rest ? [{ id: "rest", name: "At rest", set: "everything off", readings: rest }] : []),
    ...workingSituations(source),
  ];
  return cases.map(({ id, name, set, readings }) => ({
    title: `Function: ${name}`,
    set,
    rows: usersOf(source).flatMap((user) => functionRow(user, id, readings)),
  }));
}

function functionRow(user: User, situation: string, readings: ReportSituation): TestRow[] {
  const { part, plus, minus } = user;
  const reading = readings.parts[part.part.id];
  if (reading?.on === undefined || !plus || !minus) return [];
  const { on, volts } = reading;
  const mustBeOff = situation === "rest" && user.element.spec.type === "load" && user.element.spec.mustBeOffAtRest;
  return [
    {
      red: terminalName(plus),
      black: terminalName(minus),
      meter: "V",
      expected: onWords(on, volts),
      pass: on === null ? "" : !on ? "stays off" : mustBeOff ? "SHOULD BE OFF: put right first" : onLimits(volts),
      look: on ? `fuse, relay, then ground of ${partName(part.part)}` : "a second feed: backfeed, wrong pin",
      ...(typeof volts === "number" && !mustBeOff && (on || Math.abs(volts) < OFF_V)
        ? {
            point: {
              situation,
              meter: "V" as const,
              red: plus.address,
              black: minus.address,
              expected: volts,
              ...(on ? nearV(volts) : { least: -OFF_V, most: OFF_V }),
            },
          }
        : {}),
    },
  ];
}

function onLimits(volts: number | null | undefined): string {
  return typeof volts === "number" ? `on, ${within(volts)}` : "on";
}

function onWords(on: boolean | null, volts: number | null | undefined): string {
  if (on === null) return "not settled";
  return `${on ? "ON" : "off"}${typeof volts === "number" ? `, ${voltsText(volts)}` : ""}`;
}

/** Volts of the battery while it charges. */
export function chargeStep(source: PaperSource): TestStep {
  const batteries = source.netlist.parts.filter(({ kind, settings }) => kind.facts?.(settings).battery !== undefined);
  const rows = workingSituations(source)
    .filter(({ isRunning }) => isRunning)
    .flatMap((situation) => batteries.flatMap((battery) => chargeRow(battery, situation)));
  return { title: "Charge", set: "engine running, everything on, five minutes", rows };
}

function chargeRow({ part, terminals }: NetPart, { id, name, readings }: WorkingSituation): TestRow[] {
  const { volts } = readings.parts[part.id] ?? {};
  const [plus, minus] = terminals;
  if (typeof volts !== "number" || !plus || !minus) return [];
  return [
    {
      red: terminalName(plus),
      black: terminalName(minus),
      meter: "V",
      expected: voltsText(volts),
      pass: `steady, ${within(volts)}`,
      look: `alternator, belt, its cable (${name})`,
      point: {
        situation: id,
        meter: "V",
        red: plus.address,
        black: minus.address,
        expected: volts,
        ...nearV(volts),
      },
    },
  ];
}

function within(volts: number): string {
  const { least, most } = nearV(volts);
  return unbroken(`${least.toFixed(1)} to ${most.toFixed(1)} V`);
}

/** What passes as printed: limits to a tenth of a volt. */
function nearV(volts: number): { readonly least: number; readonly most: number } {
  return { least: Number((volts - NEAR_V).toFixed(1)), most: Number((volts + NEAR_V).toFixed(1)) };
}

/** The last device between a source and the spot, to look at when it is dead. */
function feederOf(spot: NetTerminal, source: PaperSource): string {
  const way = conductionOf(source, "rest").wayTo(spot.node);
  const device = way.findLast(({ through }) => "spec" in through && through.spec.type === "protection")?.through;
  return device && "spec" in device ? `${partName(device.part.part)}, then its feed` : "the battery and its main cable";
}
