import { cautions } from "../../reference/index.ts";
import { codeBlocks } from "../code/code-block.ts";
import { deviceRows, fuseWords, groundRows, hotWords, largestWords, relayRows, wireHot } from "../lists/index.ts";
import {
  headingBlock,
  paragraphBlock,
  pointsBlock,
  tableBlock,
  unbroken,
  type Block,
  type Row,
} from "../layout/index.ts";
import type { PaperOptions, PaperSource } from "../paper.ts";
import { bothLengths, bothSizes, colourWords, terminalName, wireName } from "../words/index.ts";

/** What the card says in words, under or behind its drawing. */
export function cardLists(source: PaperSource, options: PaperOptions, widthMm: number): Block[] {
  return [
    ...snagBlocks(source, widthMm),
    headingBlock("Fuses and breakers", widthMm),
    fuseTable(source, widthMm),
    ...relayBlocks(source, widthMm),
    headingBlock(options.words === "earth" ? "Earths and returns" : "Grounds and returns", widthMm),
    groundTable(source, options, widthMm),
    headingBlock("Wires", widthMm),
    wireTable(source, widthMm),
    ...noteBlocks(source, widthMm),
    headingBlock("Take care", widthMm),
    pointsBlock(
      cautions.filter(({ onPapers }) => onPapers).map(({ text }) => text),
      widthMm,
    ),
    ...codeBlocks(source.document, widthMm),
  ];
}

function fuseTable(source: PaperSource, widthMm: number): Block {
  const rows = deviceRows(source).map((device): Row => ({
    cells: [device.name, fuseWords(device), largestWords(device), device.place],
  }));
  const columns = [
    { head: "Fuse" },
    { head: "Rating" },
    { head: unbroken("Largest spare") },
    { head: "Where it is", grow: 1 },
  ];
  return tableBlock({ columns, rows, none: "No fuse and no breaker is drawn." }, widthMm);
}

function relayBlocks(source: PaperSource, widthMm: number): Block[] {
  const relays = relayRows(source);
  if (relays.length === 0) return [];
  const rows = relays.flatMap(({ name, coil, pins }): Row[] => [
    { band: `${name}: coil ${coil.ohm} Ω, pulls in at ${coil.pullInV} V, ${suppressionWords(coil.suppression)}` },
    ...pins.map((pin): Row => ({ cells: [pin.mark, pin.about, pin.joins, pin.atRest] })),
  ]);
  const columns = [{ head: "Pin" }, { head: "What it is" }, { head: "Wire", grow: 1 }, { head: "Key out" }];
  return [headingBlock("Relays, pin by pin", widthMm), tableBlock({ columns, rows }, widthMm)];
}

function suppressionWords(suppression: "none" | "resistor" | "diode"): string {
  return suppression === "none" ? "not suppressed" : `suppressed by ${suppression}`;
}

function groundTable(source: PaperSource, options: PaperOptions, widthMm: number): Block {
  const rows = groundRows(source, options).map(({ name, what, joins }): Row => ({ cells: [name, what, joins] }));
  const columns = [{ head: "Place" }, { head: "What it is" }, { head: "Wires", grow: 1 }];
  return tableBlock({ columns, rows, none: "No return is drawn." }, widthMm);
}

function wireTable(source: PaperSource, widthMm: number): Block {
  const { netlist } = source;
  const rows = netlist.wires.map((wire): Row => {
    return {
      cells: [
        wireName(wire.wire),
        colourWords(wire.wire.colour),
        bothSizes(wire),
        bothLengths(wire.wire.metres, netlist.system.sizes),
        terminalName(wire.from),
        terminalName(wire.to),
        hotWords(wireHot(wire, source)),
      ],
    };
  });
  const columns = [
    { head: "Wire" },
    { head: "Colour", grow: 1 },
    { head: "Size" },
    { head: "Length" },
    { head: "From", grow: 1 },
    { head: "To", grow: 1 },
    { head: "Hot" },
  ];
  return tableBlock({ columns, rows, none: "No wire is drawn." }, widthMm);
}

function snagBlocks({ report }: PaperSource, widthMm: number): Block[] {
  const open = report.snags.filter(({ level }) => level === "stop" || level === "fix");
  const unknown = report.snags.filter(({ level }) => level === "cant-check").length;
  if (open.length === 0 && unknown === 0) return [];
  const lines = open.map(({ level, text }) => (level === "stop" ? `DO NOT POWER UP: ${text}` : text));
  const gaps =
    unknown === 0
      ? []
      : [`${unknown} ${unknown === 1 ? "thing" : "things"} could not be checked: see the measure-first list.`];
  return [headingBlock("Not yet right", widthMm), pointsBlock([...lines, ...gaps], widthMm)];
}

function noteBlocks({ document }: PaperSource, widthMm: number): Block[] {
  const notes = document.sheet?.notes ?? "";
  return notes.trim() === "" ? [] : [headingBlock("Notes", widthMm), paragraphBlock(notes, widthMm)];
}
