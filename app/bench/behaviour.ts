import { CHASSIS, elementForms } from "../../core/parts/index.ts";
import type { BenchElement, BenchSymbol } from "./symbol.ts";

/** Most elements a file may hold in one symbol. */
const MOST_ELEMENTS = 200;

interface Recipe {
  /** What the trade calls it. */
  readonly label: string;
  readonly elements: readonly BenchElement[];
  /** Stands in the way of the current, so it is put in front of what is there. */
  readonly inLine?: true;
  /** Moved by the symbol's own control, which it gets if it has none. */
  readonly control?: true;
}

/** What can be put inside, by trade name. */
export const RECIPES: readonly Recipe[] = [
  { label: "Load", elements: [{ type: "load" }] },
  { label: "Filament lamp", elements: [{ type: "load", law: "filament" }] },
  { label: "Fuse", elements: [{ type: "protection" }], inLine: true },
  { label: "Breaker", elements: [{ type: "protection", recloses: true }], inLine: true },
  { label: "Switch", elements: [{ type: "contact", positions: ["on"] }], inLine: true, control: true },
  { label: "Diode", elements: [{ type: "diode" }], inLine: true },
  { label: "Coil with a contact", elements: [{ type: "coil" }, { type: "contact" }] },
  { label: "Conductor", elements: [{ type: "link" }] },
  { label: "Source", elements: [{ type: "source" }] },
  { label: "Converter", elements: [{ type: "converter" }] },
];

const IN_LINE: ReadonlySet<BenchElement["type"]> = new Set(["protection", "contact", "diode"]);

/** What an element's ends are called, by the names its form gives them. */
const END_WORDS: Readonly<Record<string, readonly string[]>> = {
  "a b": ["One end", "Other end"],
  "a k": ["Anode", "Cathode (the ring)"],
  "plus minus": ["Plus", "Minus"],
  "inPlus inMinus outPlus outMinus": ["Input plus", "Input minus", "Output plus", "Output minus"],
};

/** The element's ends, by the name the file gives them and in words. */
export function endsOf({ type }: BenchElement): readonly (readonly [name: string, words: string])[] {
  const { ends } = elementForms[type];
  return ends.map((name, at) => [name, END_WORDS[ends.join(" ")]?.[at] ?? name]);
}

/** Where an end of the element is; "": nowhere yet. */
export function placeOf(element: BenchElement, end: string): string {
  const place = element[end];
  return typeof place === "string" ? place : "";
}

/** What the trade calls the element, with its coil's name where it has one. */
export function elementTitle(element: BenchElement): string {
  switch (element.type) {
    case "protection":
      return element["recloses"] === true ? "Breaker" : "Fuse";
    case "contact":
      return element.coil === undefined ? "Switch" : `Contact of coil ${element.coil}`;
    case "coil":
      return `Coil ${element.name ?? "coil"}`;
    case "load":
      return element["law"] === "filament" ? "Filament lamp" : "Load";
    default:
      return elementForms[element.type].label;
  }
}

/** Where an end can be put, with the words for it. The last joint is one that is not in use yet. */
export function placesFor(symbol: BenchSymbol): readonly { readonly value: string; readonly label: string }[] {
  return [
    ...symbol.terminals.map(({ name }) => ({ value: name, label: `terminal ${name}` })),
    ...jointsOf(symbol).map((joint) => ({ value: joint, label: placeWords(joint) })),
    { value: freeJoint(symbol), label: `a new joint inside (${letters(freeJoint(symbol))})` },
    { value: CHASSIS, label: placeWords(CHASSIS) },
  ];
}

export function placeWords(place: string): string {
  if (place === CHASSIS) return "the vehicle's frame";
  if (place === "") return "nowhere yet";
  return place.startsWith("$") ? `joint ${letters(place)} inside` : `terminal ${place}`;
}

/** The symbol with this put inside: between its first and its last terminal, in line with what is there. */
export function withRecipe(symbol: BenchSymbol, { elements, inLine, control }: Recipe): BenchSymbol {
  if (symbol.elements.length + elements.length > MOST_ELEMENTS) return symbol;
  const from = symbol.terminals[0]?.name ?? "";
  const to = symbol.terminals.at(-1)?.name ?? "";
  const joint = freeJoint(symbol);
  const positions = control && symbol.positions.length === 0 ? ["off", "on"] : symbol.positions;
  const coil = freeCoil(symbol);
  const added = elements.map((element): BenchElement => {
    const ends = Object.fromEntries(endsOf(element).map(([name], at) => [name, at % 2 === 0 ? from : to]));
    if (elements.length === 1) return { ...element, ...ends };
    return element.type === "coil" ? { ...element, ...ends, name: coil } : { ...element, ...ends, b: "", coil };
  });
  const [only] = added;
  const isMet = symbol.elements.some((element) => endsOf(element).some(([name]) => element[name] === from));
  if (only === undefined || from === to || !isMet || elements.length > 1)
    return { ...symbol, positions, elements: [...symbol.elements, ...added] };
  const [first = "", second = ""] = endsOf(only).map(([name]) => name);
  if (inLine) {
    const before = symbol.elements.map((element) => withEndMoved(element, from, joint));
    return { ...symbol, positions, elements: [...before, { ...only, [first]: from, [second]: joint }] };
  }
  const spans = symbol.elements.findIndex(
    (element) => IN_LINE.has(element.type) && endsOf(element).every(([name], at) => element[name] === [from, to][at]),
  );
  if (spans < 0 || only.type !== "load") return { ...symbol, positions, elements: [...symbol.elements, ...added] };
  const [, far = ""] = endsOf(symbol.elements[spans]!).map(([name]) => name);
  const joined = symbol.elements.map((element, at) => (at === spans ? { ...element, [far]: joint } : element));
  return { ...symbol, positions, elements: [...joined, { ...only, [first]: joint }] };
}

export function withElement(
  symbol: BenchSymbol,
  index: number,
  change: Readonly<Record<string, unknown>>,
): BenchSymbol {
  return { ...symbol, elements: symbol.elements.map((one, at) => (at === index ? changedElement(one, change) : one)) };
}

/** The element with these keys set; those set to `undefined` go. */
export function changedElement(element: BenchElement, change: Readonly<Record<string, unknown>>): BenchElement {
  const entries = Object.entries({ ...element, ...change }).filter(([, value]) => value !== undefined);
  return Object.fromEntries(entries) as BenchElement;
}

/** Without the element; contacts of a coil that goes are moved by nothing until it is said. */
export function withoutElement(symbol: BenchSymbol, index: number): BenchSymbol {
  const gone = symbol.elements[index];
  const coil = gone?.type === "coil" ? (gone.name ?? "coil") : undefined;
  const left = symbol.elements.filter((_, at) => at !== index);
  const elements = left.map((one) => (coil !== undefined && one.coil === coil ? { ...one, coil: "" } : one));
  return { ...symbol, elements };
}

/** A coil under another name, its contacts with it. */
export function withCoilNamed(symbol: BenchSymbol, index: number, name: string): BenchSymbol {
  const before = symbol.elements[index]?.name ?? "coil";
  const elements = symbol.elements.map((one, at) => {
    if (at === index) return { ...one, name };
    return one.coil === before ? { ...one, coil: name } : one;
  });
  return { ...symbol, elements };
}

/** A terminal under another name; what ends on it inside goes along. */
export function withTerminalNamed(symbol: BenchSymbol, index: number, name: string): BenchSymbol {
  const before = symbol.terminals[index]!.name;
  return {
    ...symbol,
    terminals: symbol.terminals.map((one, at) => (at === index ? { ...one, name } : one)),
    elements: symbol.elements.map((element) => withEndMoved(element, before, name)),
  };
}

/** Positions of the symbol's own control; contacts forget those that are gone. */
export function withPositions(symbol: BenchSymbol, positions: readonly string[]): BenchSymbol {
  const elements = symbol.elements.map((element) =>
    element.positions === undefined
      ? element
      : { ...element, positions: element.positions.filter((position) => positions.includes(position)) },
  );
  return { ...symbol, positions, elements };
}

export function coilsOf(symbol: BenchSymbol): readonly string[] {
  return symbol.elements.flatMap(({ type, name }) => (type === "coil" ? [name ?? "coil"] : []));
}

function withEndMoved(element: BenchElement, from: string, to: string): BenchElement {
  const moved = endsOf(element).filter(([name]) => element[name] === from);
  return moved.length === 0 ? element : { ...element, ...Object.fromEntries(moved.map(([name]) => [name, to])) };
}

function jointsOf(symbol: BenchSymbol): readonly string[] {
  const all = symbol.elements.flatMap((element) => endsOf(element).map(([name]) => placeOf(element, name)));
  return [...new Set(all)].filter((place) => place.startsWith("$") && place !== CHASSIS).toSorted();
}

function freeJoint(symbol: BenchSymbol): string {
  const used = jointsOf(symbol);
  const names = Array.from({ length: used.length + 1 }, (_, at) => `$${jointName(at)}`);
  return names.find((name) => !used.includes(name))!;
}

/** a to z, then a1, b1 and so on. */
function jointName(at: number): string {
  return `${String.fromCodePoint(97 + (at % 26))}${at < 26 ? "" : Math.floor(at / 26)}`;
}

function freeCoil(symbol: BenchSymbol): string {
  const used = coilsOf(symbol);
  for (let number = 1; ; number += 1) if (!used.includes(`k${number}`)) return `k${number}`;
}

function letters(joint: string): string {
  return joint.slice(1).toUpperCase();
}
