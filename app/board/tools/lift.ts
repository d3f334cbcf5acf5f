import {
  type Document,
  type Edit,
  type GridPoint,
  splitAddress,
  type Transaction,
  type Wire,
} from "../../../core/document/index.ts";
import { type Box, moveBox, type Point, routeWire, routeCorridor } from "../../../core/geometry/index.ts";
import type { TerminalPicture } from "../../../core/picture/index.ts";
import type { Lift } from "../board-overlay.ts";
import type { Scene } from "../paint/scene.ts";

/** Parts taken hold of, with the wires that move whole and those that stretch. */
export interface Held {
  readonly parts: ReadonlySet<string>;
  readonly inner: readonly string[];
  readonly outer: readonly Wire[];
  readonly moving: ReadonlySet<string>;
  readonly hidden: ReadonlySet<string>;
}

/** What moves when these parts do: wires between two of them move whole, wires with one end on them stretch. */
export function holdParts(document: Document, parts: ReadonlySet<string>): Held {
  const inner: string[] = [];
  const outer: Wire[] = [];
  for (const wire of document.wires) {
    const ends = Number(parts.has(splitAddress(wire.from)[0])) + Number(parts.has(splitAddress(wire.to)[0]));
    if (ends === 2) inner.push(wire.id);
    else if (ends === 1) outer.push(wire);
  }
  return {
    parts,
    inner,
    outer,
    moving: new Set([...parts, ...inner]),
    hidden: new Set([...parts, ...inner, ...outer.map(({ id }) => id)]),
  };
}

/** How the held parts look, moved by whole grid steps: stretched wires find their way anew. */
export function liftHeld(held: Held, scene: Scene, dx: number, dy: number): Lift {
  const stretched = held.outer.flatMap((wire) => {
    const from = movedTerminal(wire.from, held, scene, dx, dy);
    const to = movedTerminal(wire.to, held, scene, dx, dy);
    if (from === null || to === null) return [];
    const via = stretchedVia(wire, held, scene, dx, dy);
    const corridor = routeCorridor([from.at, ...via, to.at]);
    const route = routeWire(
      from,
      to,
      via,
      roomsIn(corridor, held, scene, dx, dy),
      laidBefore(wire, corridor, held, scene),
    );
    return [{ id: wire.id, route }];
  });
  return { hidden: held.hidden, moving: held.moving, dx, dy, stretched };
}

function movedTerminal(address: string, held: Held, scene: Scene, dx: number, dy: number): TerminalPicture | null {
  const id = splitAddress(address)[0];
  const terminal = scene.parts.get(id)?.picture.terminals.find((each) => each.address === address);
  if (terminal === undefined) return null;
  return held.parts.has(id) ? { ...terminal, at: [terminal.at[0] + dx, terminal.at[1] + dy] } : terminal;
}

/** The corners of a stretched wire: one on a straight run from the end that moves goes sideways with it, so that the run stays straight. */
function stretchedVia({ from, to, via = [] }: Wire, held: Held, scene: Scene, dx: number, dy: number): GridPoint[] {
  const isFromHeld = held.parts.has(splitAddress(from)[0]);
  const end = movedTerminal(isFromHeld ? from : to, held, scene, 0, 0);
  const next = isFromHeld ? 0 : via.length - 1;
  return via.map(([x, y], index): GridPoint => {
    if (index !== next || end === null) return [x, y];
    return [x === end.at[0] ? x + dx : x, y === end.at[1] ? y + dy : y];
  });
}

function roomsIn(corridor: Box, held: Held, scene: Scene, dx: number, dy: number): Box[] {
  const still = scene.parts.touching(corridor).filter(({ picture }) => !held.parts.has(picture.id));
  const moved = scene.parts.touching(moveBox(corridor, -dx, -dy)).filter(({ picture }) => held.parts.has(picture.id));
  const shift = (box: Box) => moveBox(box, dx, dy);
  return [...still.flatMap(({ picture }) => picture.room), ...moved.flatMap(({ picture }) => picture.room.map(shift))];
}

/** Routes the wire would keep beside once dropped: those of resting wires before it that share no terminal with it. */
function laidBefore({ id, from, to }: Wire, corridor: Box, held: Held, scene: Scene): (readonly Point[])[] {
  const order = scene.wires.get(id)?.order ?? Infinity;
  return scene.wires.touching(corridor).flatMap((other) => {
    const { ends, route } = other.picture;
    const isApart = !ends.includes(from) && !ends.includes(to);
    return isApart && other.order < order && !held.hidden.has(other.picture.id) ? [route] : [];
  });
}

/** The move as one step to undo, corners of wires included. `null` when nothing moved. */
export function moveHeld(held: Held, document: Document, scene: Scene, dx: number, dy: number): Transaction | null {
  if (dx === 0 && dy === 0) return null;
  const moved = ([x, y]: GridPoint): GridPoint => [x + dx, y + dy];
  const edits: Edit[] = [];
  for (const part of document.parts) {
    if (held.parts.has(part.id)) edits.push({ op: "set-part", id: part.id, change: { at: moved(part.at ?? [0, 0]) } });
  }
  const { notes = [] } = document;
  if (notes.some(({ id }) => held.parts.has(id))) {
    const stand = notes.map((note) => (held.parts.has(note.id) ? { ...note, at: moved(note.at) } : note));
    edits.push({ op: "set-notes", notes: stand });
  }
  const setVia = (id: string, via: readonly GridPoint[]) => edits.push({ op: "set-wire", id, change: { via } });
  const inner = new Set(held.inner);
  for (const { id, via } of document.wires) if (via !== undefined && inner.has(id)) setVia(id, via.map(moved));
  for (const wire of held.outer) {
    if (wire.via === undefined) continue;
    const via = stretchedVia(wire, held, scene, dx, dy);
    if (via.some(([x, y], i) => x !== wire.via![i]![0] || y !== wire.via![i]![1])) setVia(wire.id, via);
  }
  const count = held.parts.size;
  const [only] = held.parts;
  return { label: count === 1 ? `Move ${only!.toUpperCase()}` : `Move ${count} parts`, edits };
}
