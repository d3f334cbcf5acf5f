import type { Cover } from "../document/index.ts";
import { boxOfPoints, boxOfStroke, unionBox, type Box, type Point, type Stroke } from "../geometry/index.ts";
import { elementForms, type Moved } from "./custom-elements.ts";
import { drawingSchema, elementsSchema, positionsSchema, terminalsSchema } from "./custom-schema.ts";
import { box, corners, line, outline } from "./drawing.ts";
import type { Element } from "./elements.ts";
import { definePart, type Fault, type Fixing, type Terminal } from "./part-kind.ts";
import { flag, type Setting } from "./setting.ts";

interface OwnTerminal {
  readonly name: string;
  readonly at: Point;
  readonly exit: Terminal["exit"];
  readonly about?: string;
  readonly wired?: Cover;
  readonly unwired?: Cover;
  readonly fixing?: Fixing;
}

/** An element as the file says it: its type, its ends by name, what moves it, and its settings. */
interface OwnElement extends Moved {
  readonly type: keyof typeof elementForms;
  readonly [key: string]: unknown;
}

interface OwnSymbol {
  readonly terminals: readonly OwnTerminal[];
  readonly drawing: readonly Stroke[];
  readonly elements: readonly OwnElement[];
  readonly positions: readonly string[];
  readonly momentary: boolean;
}

function onBench<T>(label: string, fallback: T, help: string, schema: Setting<T>["schema"]): Setting<T> {
  return { type: "bench", label, unit: "", help, fallback, schema };
}

const firstTerminals: readonly OwnTerminal[] = [
  { name: "1", at: [0, 0], exit: "left" },
  { name: "2", at: [4, 0], exit: "right" },
];

/** A person's own symbol, drawn and put together on the Bench. */
export const custom = definePart<OwnSymbol>({
  kind: "custom",
  title: "Own symbol",
  words: ["custom", "own part", "black box", "module", "device"],
  shelf: "loads",
  letter: "n",
  about: "A symbol of your own: its outline, its terminals, and what is inside it.",
  settings: {
    terminals: onBench("Terminals", firstTerminals, "Where wires go, named as marked on the part.", terminalsSchema),
    drawing: onBench<readonly Stroke[]>(
      "Drawing",
      [],
      "The outline; a plain box when nothing is drawn.",
      drawingSchema,
    ),
    elements: onBench<readonly OwnElement[]>("Inside", [], "Plain elements between its terminals.", elementsSchema),
    positions: onBench<readonly string[]>(
      "Positions",
      [],
      "Of its own control, off first; empty when it has none.",
      positionsSchema,
    ),
    momentary: flag("Springs back", false, "Its control works only while it is held."),
  },
  check: (settings) => faultOf(settings),
  terminals: ({ terminals }) =>
    terminals.map(({ name, at, exit, about = "", wired = "covered", unwired = "bare", fixing = "lead" }) => ({
      name,
      at,
      exit,
      cover: { wired, unwired },
      fixing,
      about,
    })),
  symbol: ({ terminals, drawing }) => (drawing.length > 0 ? drawing : plainBox(terminals)),
  bounds: ({ terminals, drawing }) =>
    (drawing.length > 0 ? drawing : plainBox(terminals)).map(boxOfStroke).reduce(unionBox, aroundTerminals(terminals)),
  control: ({ positions, momentary }) => (positions.length > 0 ? { positions, momentary, noun: "control" } : null),
  model: ({ elements }, { nominalV }) => elements.flatMap((element) => elementOf(element, nominalV) ?? []),
  caption: () => "",
});

function elementOf(element: OwnElement, nominalV: 12 | 24): Element | null {
  const { ends, settings, make } = elementForms[element.type];
  const filled = Object.fromEntries(
    Object.entries(settings).map(([name, setting]) => [
      name,
      Object.hasOwn(element, name) ? element[name] : setting.fallback,
    ]),
  );
  return make((name) => (ends.includes(name) ? String(element[name]) : ""), filled, element, nominalV);
}

/** The first thing that does not fit together between terminals, elements and positions. */
function faultOf({ terminals, elements, positions }: OwnSymbol): Fault | null {
  if (positions.length > 0 && positions[0] !== "off")
    return { key: "positions[0]", got: positions[0], wanted: '"off"' };
  const names = new Set(terminals.map(({ name }) => name));
  const coils = elements.flatMap(({ type, name }) => (type === "coil" ? [name ?? "coil"] : []));
  if (new Set(coils).size < coils.length)
    return { key: "elements", got: coils[0], wanted: "a different name for each coil" };
  for (const [at, element] of elements.entries()) {
    const fault = faultIn(element, names, coils, positions);
    if (fault) return { ...fault, key: `elements[${at}].${fault.key}` };
  }
  return null;
}

function faultIn(
  element: OwnElement,
  names: ReadonlySet<string>,
  coils: readonly string[],
  positions: readonly string[],
): Fault | null {
  for (const end of elementForms[element.type].ends) {
    const node = String(element[end]);
    if (node.startsWith("$") || names.has(node)) continue;
    return { key: end, got: node, wanted: "a terminal of this symbol, or a name that starts with $" };
  }
  if (element.coil !== undefined && !coils.includes(element.coil)) {
    return { key: "coil", got: element.coil, wanted: "the name of a coil of this symbol" };
  }
  const stranger = element.positions?.find((position) => !positions.includes(position));
  return stranger === undefined
    ? null
    : { key: "positions", got: stranger, wanted: "positions of this symbol's own control" };
}

/** A box one step inside the terminals, with a lead to each. */
function plainBox(terminals: readonly OwnTerminal[]): Stroke[] {
  const { left, top, right, bottom } = aroundTerminals(terminals);
  const inner: Box = box(left + 1, top - 1, Math.max(right - 1, left + 2), bottom + 1);
  const clamp = (value: number, low: number, high: number) => Math.min(Math.max(value, low), high);
  return [
    outline(corners(inner.left, inner.top, inner.right, inner.bottom)),
    ...terminals.map(({ at: [x, y] }) =>
      line([
        [x, y],
        [clamp(x, inner.left, inner.right), clamp(y, inner.top, inner.bottom)],
      ]),
    ),
  ];
}

function aroundTerminals(terminals: readonly OwnTerminal[]): Box {
  return boxOfPoints(terminals.map(({ at }) => at)) ?? box(0, 0, 0, 0);
}
