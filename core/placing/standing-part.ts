import type { Part } from "../document/index.ts";
import {
  standBox,
  standPoint,
  standSide,
  unionBox,
  type Box,
  type Point,
  type Side,
  type Stance,
} from "../geometry/index.ts";
import { kindOf, modelOf, settingsOf, terminalsOf, type Element } from "../parts/index.ts";

/** A part as it would stand with its origin on the sheet's. */
export interface StandingPart {
  readonly index: number;
  readonly part: Part;
  readonly terminals: readonly { readonly name: string; readonly at: Point; readonly exit: Side | "any" }[];
  readonly elements: readonly Element[];
  /** Whole grid steps: the symbol, its lettering and the first step of every wire. */
  readonly room: Box;
}

/** Lettering beside a symbol: the drawing's sizes, grid steps. A label longer than this may run into its neighbour. */
const NAME_SIZE = 0.75;
const LETTER_WIDTH = 0.58;
const LETTERING_HEIGHT = 2.2;
const MOST_LETTERING_WIDTH = 12;

export function standingPart(part: Part, index: number): StandingPart {
  const kind = kindOf(part.kind)!;
  const stance: Stance = { at: [0, 0], turn: part.turn ?? 0, flip: part.flip ?? false };
  const terminals = terminalsOf(part).map(({ name, at, exit, anyExit }) => ({
    name,
    at: standPoint(at, stance),
    exit: anyExit ? ("any" as const) : standSide(exit, stance),
  }));
  const symbol = standBox(kind.bounds(settingsOf(part)), stance);
  const elements = modelOf(part, { nominalV: 12, seriesUpper: false });
  return { index, part, terminals, elements, room: roomOf(part, symbol, terminals) };
}

function roomOf(part: Part, symbol: Box, terminals: StandingPart["terminals"]): Box {
  const letters = part.id.length + 1 + (part.label?.length ?? 0);
  const width = Math.min(letters * NAME_SIZE * LETTER_WIDTH, MOST_LETTERING_WIDTH);
  const leaves = (side: Side) => terminals.some(({ exit }) => exit === side);
  const room = unionBox(symbol, letteringBox(symbol, width, leaves));
  const stub = (side: Side) => (leaves(side) ? 1 : 0);
  return {
    left: Math.floor(room.left) - stub("left"),
    top: Math.floor(room.top) - stub("up"),
    right: Math.ceil(room.right) + stub("right"),
    bottom: Math.ceil(room.bottom) + stub("down"),
  };
}

/** The drawing letters a part above it; where wires leave there, below; else beside it. */
function letteringBox(symbol: Box, width: number, leaves: (side: Side) => boolean): Box {
  const middle = (symbol.left + symbol.right) / 2;
  const across = { left: middle - width / 2, right: middle + width / 2 };
  if (leaves("up") && !leaves("down"))
    return { ...across, top: symbol.bottom, bottom: symbol.bottom + LETTERING_HEIGHT };
  if (leaves("up") && !leaves("right")) return { ...symbol, left: symbol.right, right: symbol.right + width + 1 };
  return { ...across, top: symbol.top - LETTERING_HEIGHT, bottom: symbol.top };
}
