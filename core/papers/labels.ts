import type { NetTerminal } from "../netlist/index.ts";
import { flagSheet } from "./flags/flag-sheet.ts";
import { deviceRows } from "./lists/index.ts";
import type { Paper, PaperOptions, PaperSource } from "./paper.ts";
import { framed } from "./printed.ts";
import { cleanText, frameInside, sheetOf } from "./layout/index.ts";
import { wireName } from "./words/index.ts";

/** Two for every wire. */
export const labels: Paper = {
  kind: "labels",
  title: "Wire labels",
  about: "Two per wire: text to paste into a label maker, or flags to print, cut out and wrap.",
  media: "text/plain",
  extension: "txt",
  make: (source) => labelText(source),
  pages: labelPages,
};

interface WireLabel {
  readonly name: string;
  /** The fuse it hangs on; empty for a return. */
  readonly circuit: string;
  readonly from: string;
  readonly to: string;
}

/** One label per line, each wire's two after each other: "w3 L3 | F1 Lamps | F1 2 > S1 1". */
function labelText(source: PaperSource): string {
  const lines = wireLabels(source).map(({ name, circuit, from, to }) =>
    [name, circuit, `${from} > ${to}`]
      .filter((piece) => piece !== "")
      .map(plain)
      .join(" | "),
  );
  return lines.flatMap((line) => [`${line}\n`, `${line}\n`]).join("");
}

function labelPages(source: PaperSource, options: PaperOptions): string[] {
  const sheet = sheetOf(options);
  const flags = wireLabels(source).flatMap(({ name, circuit, from, to }) => {
    const flag = { lines: [name, circuit, `${from} > ${to}`].filter((piece) => piece !== "") };
    return [flag, flag];
  });
  return framed(labels.title, source.document, sheet, flagSheet(flags, frameInside(sheet)));
}

function wireLabels(source: PaperSource): WireLabel[] {
  const devices = new Map(deviceRows(source).map(({ address, name }) => [address, name]));
  return source.netlist.wires.map((wire) => {
    const guard = source.report.wires[wire.wire.id]?.guard;
    return {
      name: wireName(wire.wire),
      circuit: guard ? (devices.get(guard.at) ?? guard.at) : "",
      from: shortName(wire.from),
      to: shortName(wire.to),
    };
  });
}

/** "F1 2": short enough for a label. */
function shortName({ part, terminal }: NetTerminal): string {
  const id = part.part.id.toUpperCase();
  return part.terminals.length === 1 ? id : `${id} ${terminal.name}`;
}

function plain(text: string): string {
  return cleanText(text.replaceAll("\u00a0", " ")).replaceAll("|", "/");
}
