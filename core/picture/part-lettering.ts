import type { Part } from "../document/index.ts";
import type { Box, Point, Side, Stroke } from "../geometry/index.ts";
import type { Lettering, TerminalPicture } from "./types.ts";

const NAME_SIZE = 0.75;
const CAPTION_SIZE = 0.65;
const TERMINAL_SIZE = 0.5;
/** Room between symbol and lettering, and between two lines of it. Grid steps. */
const GAP = 0.6;
const LINE = 0.85;

interface Standing {
  readonly part: Part;
  readonly caption: string;
  readonly box: Box;
  readonly terminals: readonly TerminalPicture[];
  readonly strokes: readonly Stroke[];
}

/** A part's name and caption on the side its wires leave free, and the terminals' markings the symbol doesn't carry itself. */
export function partLettering(standing: Standing): Lettering[] {
  const { part, caption, terminals, strokes } = standing;
  const lines: Pick<Lettering, "text" | "size" | "role">[] = [{ text: nameOf(part), size: NAME_SIZE, role: "name" }];
  if (caption !== "") lines.push({ text: caption, size: CAPTION_SIZE, role: "caption" });
  const spot = freeSpot(standing, lines.length);
  const block = lines.map((line, i): Lettering => {
    return { ...line, at: [spot.at[0], spot.at[1] + i * LINE], anchor: spot.anchor, upright: false };
  });
  if (terminals.length < 2) return block;
  const printed = new Set(strokes.map((stroke) => (stroke.shape === "text" ? stroke.text.replace("−", "-") : null)));
  const marked = terminals.filter((terminal) => !printed.has(markingOf(terminal)));
  return [...block, ...marked.map(terminalLettering)];
}

/** "F1 Lamps": the id in capitals as on labels, then what the person calls it. */
function nameOf({ id, label }: Part): string {
  const name = id.toUpperCase();
  if (label === undefined || label === "") return name;
  return label.toUpperCase().startsWith(name) ? label : `${name} ${label}`;
}

function markingOf({ address }: TerminalPicture): string {
  return address.slice(address.indexOf(".") + 1);
}

/** Where the first line goes. Above if no wire leaves there, else below, else beside, else past the last wire above. */
function freeSpot({ box, terminals }: Standing, lineCount: number): { at: Point; anchor: Lettering["anchor"] } {
  const isFree = (side: Side) => !terminals.some((terminal) => terminal.exit === side);
  const across = (box.left + box.right) / 2;
  const height = (lineCount - 1) * LINE;
  if (isFree("up")) return { at: [across, box.top - GAP - height], anchor: "middle" };
  if (isFree("down")) return { at: [across, box.bottom + GAP], anchor: "middle" };
  const middle = (box.top + box.bottom) / 2 - height / 2;
  if (isFree("right")) return { at: [box.right + GAP, middle], anchor: "start" };
  if (isFree("left")) return { at: [box.left - GAP, middle], anchor: "end" };
  const lastUp = Math.max(...terminals.filter((terminal) => terminal.exit === "up").map((terminal) => terminal.at[0]));
  return { at: [lastUp + GAP, box.top - GAP - height], anchor: "start" };
}

/** Beside the first bit of wire, on the side that reads first. */
function terminalLettering(terminal: TerminalPicture): Lettering {
  const [x, y] = terminal.at;
  const place: Readonly<Record<TerminalPicture["exit"], { at: Point; anchor: Lettering["anchor"] }>> = {
    left: { at: [x - 0.2, y - 0.4], anchor: "end" },
    right: { at: [x + 0.2, y - 0.4], anchor: "start" },
    up: { at: [x + 0.2, y - 0.4], anchor: "start" },
    down: { at: [x + 0.2, y + 0.45], anchor: "start" },
    any: { at: [x + 0.25, y - 0.4], anchor: "start" },
  };
  const text = markingOf(terminal);
  return { text, size: TERMINAL_SIZE, role: "terminal", upright: false, ...place[terminal.exit] };
}
