import {
  splitAddress,
  type Document,
  type Edit,
  type GridPoint,
  type Transaction,
} from "../../../core/document/index.ts";
import { type Box, moveBox, type Point, routeWire, routeCorridor } from "../../../core/geometry/index.ts";
import type { TerminalPicture } from "../../../core/picture/index.ts";
import type { Lift } from "../board-overlay.ts";
import type { Scene } from "../paint/scene.ts";

/** Parts taken hold of, with the wires that move whole and those that stretch. */
export interface Held {
  readonly parts: ReadonlySet<string>;
  readonly inner: readonly string[];
  readonly outer: readonly string[];
  readonly moving: ReadonlySet<string>;
  readonly hidden: ReadonlySet<string>;
}

/** What moves when these parts do: wires between two of them move whole, wires with one end on them stretch. */
export function holdParts(document: Document, parts: ReadonlySet<string>): Held {
  const inner: string[] = [];
  const outer: string[] = [];
  for (const { id, from, to } of document.wires) {
    const ends = Number(parts.has(splitAddress(from)[0])) + Number(parts.has(splitAddress(to)[0]));
    if (ends === 2) inner.push(id);
    else if (ends === 1) outer.push(id);
  }
  return {
    parts,
    inner,
    outer,
    moving: new Set([...parts, ...inner]),
    hidden: new Set([...parts, ...inner, ...outer]),
  };
}

/** How the held parts look, moved by whole grid steps: stretched wires find their way anew. */
export function liftHeld(held: Held, document: Document, scene: Scene, dx: number, dy: number): Lift {
  const wanted = new Set(held.outer);
  const stretched = document.wires
    .filter(({ id }) => wanted.has(id))
    .flatMap((wire) => {
      const from = movedTerminal(wire.from, held, scene, dx, dy);
      const to = movedTerminal(wire.to, held, scene, dx, dy);
      if (from === null || to === null) return [];
      const via = wire.via ?? [];
      return [
        { id: wire.id, route: routeWire(from, to, via, boxesAround([from.at, ...via, to.at], held, scene, dx, dy)) },
      ];
    });
  return { hidden: held.hidden, moving: held.moving, dx, dy, stretched };
}

function movedTerminal(address: string, held: Held, scene: Scene, dx: number, dy: number): TerminalPicture | null {
  const id = splitAddress(address)[0];
  const terminal = scene.parts.get(id)?.picture.terminals.find((each) => each.address === address);
  if (terminal === undefined) return null;
  return held.parts.has(id) ? { ...terminal, at: [terminal.at[0] + dx, terminal.at[1] + dy] } : terminal;
}

function boxesAround(stops: readonly Point[], held: Held, scene: Scene, dx: number, dy: number) {
  const corridor = routeCorridor(stops);
  const still = scene.parts.touching(corridor).filter(({ picture }) => !held.parts.has(picture.id));
  const moved = scene.parts.touching(moveBox(corridor, -dx, -dy)).filter(({ picture }) => held.parts.has(picture.id));
  const shift = (box: Box) => moveBox(box, dx, dy);
  return [...still.flatMap(({ picture }) => picture.room), ...moved.flatMap(({ picture }) => picture.room.map(shift))];
}

/** The move as one step to undo; `via` points of wires between held parts go with them. `null` when nothing moved. */
export function moveHeld(held: Held, document: Document, dx: number, dy: number): Transaction | null {
  if (dx === 0 && dy === 0) return null;
  const moved = ([x, y]: GridPoint): GridPoint => [x + dx, y + dy];
  const edits: Edit[] = [];
  for (const part of document.parts) {
    if (held.parts.has(part.id)) edits.push({ op: "set-part", id: part.id, change: { at: moved(part.at ?? [0, 0]) } });
  }
  const inner = new Set(held.inner);
  for (const { id, via } of document.wires) {
    if (via !== undefined && inner.has(id)) edits.push({ op: "set-wire", id, change: { via: via.map(moved) } });
  }
  const count = held.parts.size;
  const [only] = held.parts;
  return { label: count === 1 ? `Move ${only!.toUpperCase()}` : `Move ${count} parts`, edits };
}
