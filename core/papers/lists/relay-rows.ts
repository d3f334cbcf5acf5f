import type { NetPart, NetTerminal } from "../../netlist/index.ts";
import type { Coil, Contact } from "../../parts/index.ts";
import type { PaperSource } from "../paper.ts";
import { partName, terminalName, wireName } from "../words/index.ts";

/** A part with a coil: what it is, pin by pin. */
export interface RelayRow {
  readonly part: NetPart;
  readonly name: string;
  readonly coil: Coil;
  readonly pins: readonly RelayPin[];
}

export interface RelayPin {
  readonly mark: string;
  readonly about: string;
  /** "w3 to LA1 Lamp · +"; "no wire". */
  readonly joins: string;
  /** What a hand or a meter finds there with everything at rest. */
  readonly atRest: string;
  /** Made while the coil rests, fed or not: the one to watch (87a). */
  readonly madeAtRest: boolean;
}

/** Every part with a coil, in the order of the drawing. */
export function relayRows(source: PaperSource): RelayRow[] {
  return source.netlist.parts.flatMap((part) => {
    const coil = part.elements.map(({ spec }) => spec).find((spec): spec is Coil => spec.type === "coil");
    if (!coil) return [];
    const restContacts = part.elements.flatMap(({ spec }) => (isMadeAtRest(spec) ? [spec.b] : []));
    const pins = part.terminals.map((terminal) =>
      pinOf(terminal, restContacts.includes(terminal.terminal.name), source),
    );
    return [{ part, name: partName(part.part), coil, pins }];
  });
}

function isMadeAtRest(spec: NetPart["elements"][number]["spec"]): spec is Contact {
  return spec.type === "contact" && "coil" in spec.movedBy && spec.movedBy.closedWhen === "released";
}

function pinOf(terminal: NetTerminal, madeAtRest: boolean, source: PaperSource): RelayPin {
  return {
    mark: terminal.terminal.name,
    about: terminal.terminal.about,
    joins: joinsOf(terminal, source),
    atRest: standingWords(terminal, source),
    madeAtRest,
  };
}

/** The wires on a terminal and where they go: "w3 to LA1 Lamp · +"; "no wire". */
export function joinsOf(terminal: NetTerminal, { netlist }: PaperSource): string {
  const joins = terminal.wires.map((number) => {
    const wire = netlist.wires[number]!;
    return `${wireName(wire.wire)} to ${terminalName(wire.from === terminal ? wire.to : wire.from)}`;
  });
  return joins.length === 0 ? "no wire" : joins.join("; ");
}

const COVER_WORDS = { bare: "bare", covered: "covered", cavity: "empty cavity" } as const;

/** "HOT at rest, bare"; "hot when switched"; "dead". */
export function standingWords(terminal: NetTerminal, { report }: PaperSource): string {
  const standing = report.terminals[terminal.address];
  if (!standing) return "not known";
  if (terminal.cover === "cavity") return "empty cavity, no metal";
  const cover = terminal.wires.length === 0 || terminal.cover === "bare" ? `, ${COVER_WORDS[terminal.cover]}` : "";
  const through = standing.via === "load" ? " through a load" : "";
  if (standing.hot === "always" || standing.hot === "at-rest") return `HOT at rest${through}${cover}`;
  return standing.hot === "switched" ? `hot when switched${through}${cover}` : `never hot${cover}`;
}

/** "changeover, 5 pins"; "make contact, 4 pins": by its contacts, as drawn on the relay's own side. */
export function relaySort(part: NetPart): string {
  const contacts = part.elements.filter(({ spec }) => spec.type === "contact");
  const sort = contacts.some(({ spec }) => isMadeAtRest(spec))
    ? "changeover"
    : contacts.length > 1
      ? `${contacts.length} make contacts`
      : "make contact";
  return `${sort}, ${part.terminals.length} pins`;
}
