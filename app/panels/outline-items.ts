import type { Document, Part, Wire } from "../../core/document/index.ts";
import type { Report } from "../../core/report/index.ts";
import { formatQuantity } from "../../core/units/index.ts";
import { partName, placeName, viewOf } from "../store/part-view.ts";
import { standingWords } from "../store/standing-words.ts";
import type { Present } from "../worker/protocol.ts";

/** One line of the drawing as a list: a part, a terminal under it, or a wire. */
export interface OutlineItem {
  /** Part or wire id, or a terminal's address. */
  readonly place: string;
  /** What a click or arrow selects. */
  readonly selects: string;
  readonly level: 1 | 2;
  readonly text: string;
  /** Parts only. */
  readonly isOpen?: boolean;
}

/** Parts in the order of the drawing, each with its terminals where opened, then the wires and the notes. */
export function outlineItems(
  document: Document,
  opened: ReadonlySet<string>,
  report: Report | null,
  present: Present | null,
): OutlineItem[] {
  const parts = document.parts.flatMap((part): OutlineItem[] => {
    const isOpen = opened.has(part.id);
    const head: OutlineItem = { place: part.id, selects: part.id, level: 1, text: partText(part, present), isOpen };
    return isOpen ? [head, ...terminalItems(part, report)] : [head];
  });
  return [
    ...parts,
    ...document.wires.map((wire) => ({
      place: wire.id,
      selects: wire.id,
      level: 1 as const,
      text: wireText(document, wire, present),
    })),
    ...(document.notes ?? []).map(({ id, text }) => ({
      place: id,
      selects: id,
      level: 1 as const,
      text: `note ${id.toUpperCase()}: ${text}`,
    })),
  ];
}

function terminalItems(part: Part, report: Report | null): OutlineItem[] {
  return viewOf(part).terminals.map(({ name }) => {
    const place = `${part.id}.${name}`;
    const standing = report?.terminals[place];
    const bare = standing?.bare ? ", bare" : "";
    const kind = viewOf(part).kind.title.toLowerCase();
    return {
      place,
      selects: part.id,
      level: 2,
      text: `terminal ${name} of ${kind} ${partName(part)}, ${standingWords(standing)}${bare}`,
    };
  });
}

function partText(part: Part, present: Present | null): string {
  const { kind } = viewOf(part);
  const reading = present?.parts[part.id];
  const doing = [
    reading?.on === true && "on",
    reading?.on === false && "off",
    reading?.pulledIn === true && "pulled in",
    typeof reading?.amps === "number" && formatQuantity(reading.amps, "A"),
  ];
  return [`${partName(part)}, ${kind.title.toLowerCase()}`, ...doing.filter((word) => word !== false)].join(", ");
}

function wireText(document: Document, wire: Wire, present: Present | null): string {
  const amps = present?.wires[wire.id]?.amps;
  const size = wire.size ?? "size not said";
  const now = typeof amps === "number" ? `, ${formatQuantity(amps, "A")}` : "";
  return `${placeName(document, wire.id)}, from ${placeName(document, wire.from)} to ${placeName(document, wire.to)}, ${size}${now}`;
}
