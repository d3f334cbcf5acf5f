import {
  deviceRows,
  fuseWords,
  largestWords,
  hotWords,
  isHotAtRest,
  relayRows,
  relaySort,
  type DeviceRow,
  type RelayRow,
} from "./lists/index.ts";
import { headingBlock, tableBlock, unbroken, type Block, type Row } from "./layout/index.ts";
import type { Paper, PaperOptions, PaperSource } from "./paper.ts";
import { printed } from "./printed.ts";
import { ampsWords, partName } from "./words/index.ts";

/** What goes inside the lid of the fuse box. */
export const legend: Paper = {
  kind: "legend",
  title: "Fuse and relay legend",
  about: "For the lid of the fuse box: what each fuse feeds, the largest spare, and what each relay is.",
  media: "image/svg+xml",
  extension: "svg",
  make: (source, options) => legendPages(source, options)[0]!,
  pages: legendPages,
};

function legendPages(source: PaperSource, options: PaperOptions): string[] {
  return printed(legend.title, source.document, options, (widthMm) => [
    headingBlock("Fuses and breakers", widthMm),
    fuseTable(source, widthMm),
    headingBlock("Relays", widthMm),
    relayTable(source, widthMm),
  ]);
}

function fuseTable(source: PaperSource, widthMm: number): Block {
  const rows = deviceRows(source).map((device): Row => ({
    cells: [device.name, feedsOf(device), fuseWords(device), largestWords(device), hotWords(hotOf(device, source))],
  }));
  const columns = [
    { head: "Fuse" },
    { head: "Feeds", grow: 1 },
    { head: "Rating" },
    { head: unbroken("Largest spare") },
    { head: "Hot" },
  ];
  return tableBlock({ columns, rows, none: "No fuse and no breaker is drawn." }, widthMm);
}

/** What hangs on the wires it guards and draws current. */
function feedsOf({ guards }: DeviceRow): string {
  const parts = new Set(guards.flatMap(({ from, to }) => [from.part, to.part]));
  const users = [...parts].filter(({ elements }) =>
    elements.some(
      ({ spec }) => spec.type === "converter" || spec.type === "coil" || (spec.type === "load" && spec.role === "use"),
    ),
  );
  return users.map(({ part }) => partName(part)).join(", ") || "nothing yet";
}

function hotOf({ element }: DeviceRow, { report }: PaperSource) {
  const { spec, part } = element;
  const ends = [spec.a, spec.b].map((end) => report.terminals[`${part.part.id}.${end}`]?.hot);
  return (["always", "at-rest", "switched", "never"] as const).find((hot) => ends.includes(hot)) ?? "unknown";
}

function relayTable(source: PaperSource, widthMm: number): Block {
  const rows = relayRows(source).map((relay): Row => ({
    cells: [relay.name, relaySort(relay.part), contactWords(relay), restWords(relay, source)],
  }));
  const columns = [
    { head: "Relay" },
    { head: "Sort", grow: 1 },
    { head: "Contacts" },
    { head: "Contact made at rest", grow: 1 },
  ];
  return tableBlock({ columns, rows, none: "No relay is drawn." }, widthMm);
}

function contactWords({ part }: RelayRow): string {
  const ratings = part.elements.flatMap(({ spec }) =>
    spec.type === "contact" ? [`${spec.b}: ${ampsWords(spec.ratedA)}`] : [],
  );
  return ratings.join(", ");
}

function restWords(relay: RelayRow, { report }: PaperSource): string {
  const pins = relay.pins.filter(({ madeAtRest }) => madeAtRest);
  if (pins.length === 0) return "none";
  return pins
    .map(({ mark, atRest, joins }) => {
      const isHot = isHotAtRest(report.terminals[`${relay.part.part.id}.${mark}`]?.hot);
      return `${mark} ${isHot ? atRest.replace(/^HOT/, "LIVE") : atRest}${joins === "no wire" ? "" : `, ${joins}`}`;
    })
    .join("; ");
}
