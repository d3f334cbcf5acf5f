import type { NetPart } from "../../netlist/index.ts";
import { CHASSIS } from "../../parts/index.ts";
import type { PaperOptions, PaperSource } from "../paper.ts";
import { partName } from "../words/index.ts";
import { joinsOf } from "./relay-rows.ts";

/** A place where returns come together or meet the vehicle's metal. */
export interface GroundRow {
  readonly name: string;
  readonly what: string;
  readonly joins: string;
}

/** Strips that gather returns, joints to the vehicle's metal, and battery negatives. */
export function groundRows(source: PaperSource, { words }: Pick<PaperOptions, "words">): GroundRow[] {
  return source.netlist.parts.flatMap((part) => {
    const what = groundWords(part, words);
    if (what === null) return [];
    const joins = part.terminals
      .filter((terminal) => terminal.wires.length > 0 && isReturnSide(part, terminal.terminal.name))
      .map(
        (terminal) => (part.terminals.length === 1 ? "" : `${terminal.terminal.name}: `) + joinsOf(terminal, source),
      );
    return [{ name: partName(part.part), what, joins: joins.join("; ") || "no wire" }];
  });
}

function groundWords(part: NetPart, words: PaperOptions["words"]): string | null {
  const facts = part.kind.facts?.(part.settings) ?? {};
  if (facts.returnBar) return `${words} strip${facts.ratedA ? `, ${facts.ratedA} A` : ""}`;
  if (facts.surface !== undefined) {
    const surface = {
      clean: "clean bare metal",
      painted: "PAINTED: scrape to bright metal",
      unknown: "surface not looked at",
    };
    return `vehicle metal, ${surface[facts.surface]}`;
  }
  if (facts.battery) return bondWords(part);
  return null;
}

function bondWords(part: NetPart): string {
  const bond = part.elements.some(({ spec }) => spec.type === "link" && (spec.a === CHASSIS || spec.b === CHASSIS));
  return bond ? "battery negative, strapped to the vehicle" : "battery negative, no strap to the vehicle";
}

function isReturnSide(part: NetPart, terminal: string): boolean {
  const source = part.elements.map(({ spec }) => spec).find((spec) => spec.type === "source");
  return source === undefined || source.type !== "source" || source.minus === terminal;
}
