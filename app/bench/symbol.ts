import type { Cover, Part } from "../../core/document/index.ts";
import type { Point, Stroke } from "../../core/geometry/index.ts";
import type { elementForms, Fixing, Terminal } from "../../core/parts/index.ts";
import { isLetter, ownKind } from "./own-kind.ts";

export interface BenchTerminal {
  readonly name: string;
  readonly at: Point;
  readonly exit: Terminal["exit"];
  readonly about?: string;
  readonly wired?: Cover;
  readonly unwired?: Cover;
  readonly fixing?: Fixing;
  /** Its name on the part that is being changed, so that wires follow a new name; never saved. */
  readonly was?: string;
}

/** An element as the file says it: its ends and its settings under their names. An end not said yet is "". */
export interface BenchElement {
  readonly type: keyof typeof elementForms;
  readonly name?: string;
  readonly coil?: string;
  readonly positions?: readonly string[];
  readonly [key: string]: unknown;
}

/** A symbol on the Bench. */
export interface BenchSymbol {
  readonly name: string;
  /** Other words to find it by. */
  readonly words: string;
  /** Ids on the drawing start with it. */
  readonly letter: string;
  readonly terminals: readonly BenchTerminal[];
  readonly drawing: readonly Stroke[];
  readonly elements: readonly BenchElement[];
  /** Of its own control, off first; empty: it has none. */
  readonly positions: readonly string[];
  readonly momentary: boolean;
}

export const BLANK_SYMBOL: BenchSymbol = {
  name: "",
  words: "",
  letter: ownKind.letter,
  terminals: [],
  drawing: [],
  elements: [],
  positions: [],
  momentary: false,
};

/** The symbol of a placed part, or of one in a file that was read. */
export function symbolOf(part: Pick<Part, "label" | "props">): BenchSymbol {
  const props = part.props ?? {};
  const given = <T>(key: string) => (props[key] ?? ownKind.settings[key]?.fallback) as T;
  const text = (key: string) => (typeof props[key] === "string" ? props[key] : "");
  return {
    name: (text("name") || (part.label ?? "")).slice(0, 60),
    words: text("words").slice(0, 200),
    letter: isLetter(props["letter"]) ? props["letter"] : ownKind.letter,
    terminals: given("terminals"),
    drawing: given("drawing"),
    elements: given("elements"),
    positions: given("positions"),
    momentary: given("momentary"),
  };
}

/** The symbol of a placed part, each terminal knowing what it was called there. */
export function symbolOnBoard(part: Part): BenchSymbol {
  const symbol = symbolOf(part);
  return { ...symbol, terminals: symbol.terminals.map((terminal) => ({ ...terminal, was: terminal.name })) };
}

/** Everything of the symbol as settings of a part; `undefined` where the usual value holds. */
export function propsOf(symbol: BenchSymbol): Readonly<Record<string, unknown>> {
  const { name, words, letter, drawing, elements, positions, momentary } = symbol;
  return {
    name: name || undefined,
    words: words || undefined,
    letter: letter === ownKind.letter ? undefined : letter,
    terminals: symbol.terminals.map(({ was: _was, ...terminal }) => terminal),
    drawing: drawing.length > 0 ? drawing : undefined,
    elements: elements.length > 0 ? elements : undefined,
    positions: positions.length > 0 ? positions : undefined,
    momentary: momentary || undefined,
  };
}

/** A part that carries the symbol; its label is the symbol's name. */
export function partOf(symbol: BenchSymbol, id: string): Part {
  const props = Object.fromEntries(Object.entries(propsOf(symbol)).filter(([, value]) => value !== undefined));
  return { id, kind: ownKind.kind, ...(symbol.name && { label: symbol.name }), props };
}

/** Whether each word typed begins a word of its name or of the words it is found by. */
export function answersTo(symbol: BenchSymbol, typed: string): boolean {
  const wordsIn = (text: string) => text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
  const own = wordsIn(`${symbol.name} ${symbol.words}`);
  return wordsIn(typed).every((word) => own.some((one) => one.startsWith(word)));
}
