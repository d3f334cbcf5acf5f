import type { Document } from "../../core/document/index.ts";
import type { PartReading } from "../../core/readings/index.ts";
import type { Report, ReportSituation } from "../../core/report/index.ts";
import { formatDays } from "../../core/units/index.ts";

const LEVELS = { stop: "STOP", fix: "FIX", advice: "ADVICE", "cant-check": "CAN'T CHECK" } as const;

/** The report as plain text for people: snags first, then each situation, then what is hot and how each wire is guarded. */
export function reportInWords(document: Document, report: Report): string {
  return [
    document.sheet?.title ?? "Untitled drawing",
    `${document.parts.length} parts, ${document.wires.length} wires. Wire limits: ${report.capacityTable.title}.`,
    "",
    ...snagLines(report),
    ...Object.values(report.situations).flatMap(situationLines),
    ...hotLines(report),
    ...wireLines(report),
    ...summaryLines(report),
    "A plan is not an inspection: follow the vehicle maker's instructions and local codes, and have licensed people do",
    "what the law gives to them.",
    "",
  ].join("\n");
}

function snagLines({ snags }: Report): string[] {
  if (snags.length === 0) return ["No snags.", ""];
  return [
    `Snags (${snags.length}, worst first)`,
    ...snags.flatMap(({ rule, level, at, text, remedies }) => [
      `  ${LEVELS[level].padEnd(11)} ${text}`,
      `              at ${at.slice(0, 6).join(", ")} (${rule})`,
      ...remedies.map((remedy) => `              remedy: ${remedy.text}`),
    ]),
    "",
  ];
}

function situationLines({ name, settled, wires, parts, residualA }: ReportSituation): string[] {
  if (!settled) return [`${name}: the relays never settle, so no volts or amps can be given.`, ""];
  const carrying = Object.entries(wires).filter(([, { amps }]) => amps !== null && Math.abs(amps) >= 0.0005);
  return [
    `${name} (currents balance within ${residualA?.toExponential(1) ?? "?"} A)`,
    ...Object.entries(parts).flatMap(([id, reading]) => partLine(id, reading)),
    ...carrying.map(([id, { amps, dropV, dropPercent }]) => {
      const drop = dropV === null ? "drop not known" : `${show(Math.abs(dropV), "V")} lost`;
      return `  wire ${id}: ${show(amps, "A")}, ${drop}${dropPercent === null ? "" : ` (${Math.abs(dropPercent).toFixed(1)} %)`}`;
    }),
    "",
  ];
}

function partLine(id: string, reading: PartReading): string[] {
  const words = [
    reading.on === undefined ? "" : reading.on ? "on" : "off",
    reading.pulledIn === undefined ? "" : reading.pulledIn ? "pulled in" : "released",
    reading.volts === undefined ? "" : show(reading.volts, "V"),
    reading.coilV === undefined ? "" : `coil ${show(reading.coilV, "V")}`,
    reading.amps === undefined ? "" : show(reading.amps, "A"),
    reading.watts === undefined ? "" : show(reading.watts, "W"),
    reading.loadPercent == null ? "" : `${reading.loadPercent.toFixed(0)} % loaded`,
    reading.startAmps == null ? "" : `starts with ${show(reading.startAmps, "A")} at ${show(reading.startVolts, "V")}`,
  ].filter(Boolean);
  return words.length === 0 ? [] : [`  ${id}: ${words.join(", ")}`];
}

function hotLines({ terminals }: Report): string[] {
  const hot = Object.entries(terminals).filter(([, { hot }]) => hot !== "never");
  return [
    "Hot metal",
    ...hot.map(([address, { hot, via, when, bare }]) => {
      const how =
        hot === "always" ? "always hot" : hot === "at-rest" ? `hot at rest (when ${when})` : `hot when ${when}`;
      return `  ${address}: ${how}${via === "load" ? ", through a load" : ""}${bare ? ", BARE" : ""}`;
    }),
    "",
  ];
}

function wireLines({ wires }: Report): string[] {
  return [
    "Wires",
    ...Object.entries(wires).map(([id, { capacityA, guard, unguardedM }]) => {
      const limit = capacityA === null ? "limit not known" : `carries ${show(capacityA, "A")}`;
      return `  ${id}: ${limit}, ${guardInWords(guard, unguardedM)}`;
    }),
    "",
  ];
}

function guardInWords(guard: Report["wires"][string]["guard"], unguardedM: number | null): string {
  if (guard === undefined) return "a return";
  if (guard === null) return unguardedM === null ? "UNGUARDED" : `UNGUARDED for ${unguardedM} m`;
  return guard.ratingA === null
    ? `guarded by ${guard.at}, rating not known`
    : `guarded by ${guard.at} (${guard.ratingA} A)`;
}

function summaryLines({ summary }: Report): string[] {
  const { restDrainA, daysToHalf, unproved } = summary;
  return [
    restDrainA === null ? "Drain at rest: not known." : `Drain at rest: ${show(restDrainA, "A")}.`,
    ...(daysToHalf === null ? [] : [`Battery half flat in ${formatDays(daysToHalf)}.`]),
    ...unproved,
    "",
  ];
}

function show(value: number | null | undefined, unit: string): string {
  if (value == null) return `? ${unit}`;
  return `${Math.abs(value) < 0.0005 ? 0 : Number(value.toPrecision(4))} ${unit}`;
}
