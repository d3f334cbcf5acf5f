import { formatNumber } from "../units/index.ts";
import { headingBlock, pointsBlock, tableBlock, type Block, type Row } from "./layout/index.ts";
import { deviceAmps, deviceRows, usersOf, workingSituations, type WorkingSituation } from "./lists/index.ts";
import type { Paper, PaperOptions, PaperSource } from "./paper.ts";
import { printed } from "./printed.ts";
import { ampsWords, partName } from "./words/index.ts";

/** Whether battery and alternator can carry it. */
export const loadSheet: Paper = {
  kind: "load-sheet",
  title: "Load sheet",
  about:
    "Amps of every load and fuse in each situation, their sums, what the alternator has left, and days to a flat battery.",
  media: "image/svg+xml",
  extension: "svg",
  make: (source, options) => loadPages(source, options)[0]!,
  pages: loadPages,
};

/** More situations than this do not fit beside each other on A5; the rest follow in tables of their own. */
const SITUATIONS_ACROSS = 3;
/** Share of its output an alternator gives for long without harm: field practice, 80 % (rule `alternator-over`). */
const ALTERNATOR_SHARE = 0.8;

function loadPages(source: PaperSource, options: PaperOptions): string[] {
  const situations = workingSituations(source);
  return printed(loadSheet.title, source.document, options, (widthMm) => [
    ...inGroups(situations).flatMap((group) => [
      headingBlock("Loads", widthMm),
      loadTable(source, group, widthMm),
      headingBlock("Fuses and breakers", widthMm),
      deviceTable(source, group, widthMm),
    ]),
    headingBlock("Charging", widthMm),
    pointsBlock(chargingLines(source, situations), widthMm),
    headingBlock("Key out", widthMm),
    pointsBlock(restLines(source), widthMm),
  ]);
}

function loadTable(source: PaperSource, situations: readonly WorkingSituation[], widthMm: number): Block {
  const loads = usersOf(source).map(({ part }) => part);
  const rows = loads.map(({ part }): Row => ({
    cells: [partName(part), ...situations.map(({ readings }) => loadWords(readings.parts[part.id]))],
  }));
  const sums = situations.map(({ readings }) => sumWords(loads.map(({ part }) => readings.parts[part.id]?.amps)));
  return tableBlock(
    {
      columns: [{ head: "Load", grow: 1 }, ...situations.map(columnOf)],
      rows: rows.length === 0 ? [] : [...rows, { cells: ["Sum", ...sums], sum: true }],
      none: "No load is drawn.",
    },
    widthMm,
  );
}

function deviceTable(source: PaperSource, situations: readonly WorkingSituation[], widthMm: number): Block {
  const rows = deviceRows(source).map((device): Row => ({
    cells: [
      `${device.name}, ${ampsWords(device.ratingA)}`,
      ...situations.map(({ readings }) => {
        const { amps, loadPercent } = deviceAmps(device, readings);
        if (amps === null) return "not settled";
        return `${ampsWords(Math.abs(amps))}${loadPercent === null ? "" : `, ${formatNumber(Math.abs(loadPercent), 2)} %`}`;
      }),
    ],
  }));
  const columns = [{ head: "Fuse", grow: 1 }, ...situations.map(columnOf)];
  return tableBlock({ columns, rows, none: "No fuse and no breaker is drawn." }, widthMm);
}

function columnOf({ name, isRunning }: WorkingSituation) {
  return { head: `${name}, engine ${isRunning ? "running" : "off"}`, align: "end" as const, leastMm: 34 };
}

function loadWords(
  reading: { readonly amps?: number | null; readonly on?: boolean | null; readonly volts?: number | null } | undefined,
): string {
  if (!reading || reading.amps === undefined) return "";
  if (reading.amps === null || reading.on === null) return "not settled";
  if (reading.on === false) return "off";
  const volts = reading.volts === undefined || reading.volts === null ? "" : ` at ${formatNumber(reading.volts)} V`;
  return `${ampsWords(Math.abs(reading.amps))}${volts}`;
}

function sumWords(amps: readonly (number | null | undefined)[]): string {
  if (amps.includes(null)) return "not settled";
  return ampsWords(amps.reduce<number>((sum, each) => sum + Math.abs(each ?? 0), 0));
}

function chargingLines({ netlist }: PaperSource, situations: readonly WorkingSituation[]): string[] {
  const { alternatorA, baseLoadA } = netlist.system;
  const running = situations.filter(({ isRunning }) => isRunning);
  const batteries = netlist.parts.filter((part) => part.elements.some(({ spec }) => spec.type === "source"));
  const added = running.map(({ name, readings }) => ({
    name,
    amps: batteries.reduce((sum, { part }) => sum + Math.max(0, readings.parts[part.id]?.amps ?? 0), 0),
  }));
  const worst = added.toSorted((a, b) => b.amps - a.amps)[0];
  if (alternatorA === null || baseLoadA === null) {
    const missing = [
      alternatorA === null ? "the alternator's output" : "",
      baseLoadA === null ? "what the vehicle draws by itself" : "",
    ];
    return [`Can't say: ${missing.filter((each) => each !== "").join(" and ")} is not stated.`];
  }
  if (!worst) return ["No situation with the engine running is declared."];
  const limitA = alternatorA * ALTERNATOR_SHARE;
  const leftA = limitA - baseLoadA - worst.amps;
  return [
    `Alternator ${ampsWords(alternatorA)}; for long ${ALTERNATOR_SHARE * 100} % of it, ${ampsWords(limitA)}.`,
    `The vehicle itself ${ampsWords(baseLoadA)}; added at most ${ampsWords(worst.amps)} (${worst.name}).`,
    leftA >= 0 ? `${ampsWords(leftA)} left.` : `SHORT by ${ampsWords(-leftA)}: the battery goes down while you work.`,
  ];
}

function restLines({ report }: PaperSource): string[] {
  const { restDrainA, daysToHalf } = report.summary;
  if (restDrainA === null) return ["The drain with everything off could not be worked out."];
  const days = daysToHalf === null ? "" : ` Half charge in about ${formatNumber(daysToHalf, 2)} days.`;
  return [`Drain with everything off: ${formatNumber(restDrainA * 1000)} mA.${days}`];
}

function inGroups(situations: readonly WorkingSituation[]): WorkingSituation[][] {
  const groups: WorkingSituation[][] = [];
  for (let at = 0; at < situations.length; at += SITUATIONS_ACROSS)
    groups.push(situations.slice(at, at + SITUATIONS_ACROSS));
  return groups.length === 0 ? [[]] : groups;
}
