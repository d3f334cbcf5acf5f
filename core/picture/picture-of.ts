import { type Document, splitAddress, type Wire } from "../document/index.ts";
import { Area, type Box, type Point, unionBox } from "../geometry/index.ts";
import type { Pose } from "../parts/index.ts";
import { notePicture } from "./note-picture.ts";
import { nominalVOf, partPicture } from "./part-picture.ts";
import type { PartPicture, Picture, WirePicture } from "./types.ts";
import { type PartChanges, type WireWorks, workWires } from "./wire-pictures.ts";

/** What a picture was worked out from, kept beside it so that the next one need only do what changed. */
interface Work {
  readonly wires: WireWorks;
  readonly parts: PartsById;
}

type PartsById = ReadonlyMap<string, PartPicture>;

const workOf = new WeakMap<Picture, Work>();

/**
 * The whole drawing in grid steps: symbols as they stand, right-angle wire routes clear of symbols, bows at crossings, dots at
 * joints, lettering, notes.
 *
 * `poses` says by part id how symbols stand at this moment; without it all are at rest. `previous` is the picture of an
 * earlier state of the same document: what still holds is taken from it, the same objects, and the answer equals one worked
 * out without it. Wires whose ends are not on the sheet are left out. An empty sheet has a box of no size at the origin.
 */
export function pictureOf(document: Document, poses?: ReadonlyMap<string, Pose>, previous?: Picture): Picture {
  const nominalV = nominalVOf(document);
  const parts = document.parts.map((part) => partPicture(part, nominalV, poses?.get(part.id)));
  const partAt = new Map(parts.map((part) => [part.id, part]));
  const before = previous === undefined ? undefined : workOf.get(previous);
  const changes = changedParts(before?.parts ?? new Map(), partAt);
  const works = workWires(document.wires, partAt, before?.wires ?? new Map(), changes);
  const wires = Array.from(works.values(), (work) => work.picture);
  const all = document.notes === undefined ? parts : [...parts, ...document.notes.map(notePicture)];
  const picture = { parts: all, wires, joints: jointsOf(document.wires, partAt), box: boxOfDrawing(all, wires) };
  workOf.set(picture, { wires: works, parts: partAt });
  return picture;
}

/** What wires have to look at again: parts whose room on the sheet is not what it was. */
function changedParts(before: PartsById, after: PartsById): PartChanges {
  const ids = new Set<string>();
  const area = new Area();
  const add = (id: string, room: readonly Box[]) => {
    ids.add(id);
    for (const box of room) area.add(box);
  };
  for (const [id, { room }] of after) {
    const old = before.get(id);
    if (old?.room === room) continue;
    if (old !== undefined) add(id, old.room);
    add(id, room);
  }
  for (const [id, { room }] of before) if (!after.has(id)) add(id, room);
  return { ids, area };
}

interface SharedTerminal {
  readonly part: string;
  readonly address: string;
}

/** Terminals with more than one wire, kept per list of wires, which moving a part leaves alone. */
const sharedBy = new WeakMap<readonly Wire[], readonly SharedTerminal[]>();

function sharedTerminals(wires: readonly Wire[]): readonly SharedTerminal[] {
  const known = sharedBy.get(wires);
  if (known !== undefined) return known;
  const seen = new Set<string>();
  const shared = new Set<string>();
  for (const address of wires.flatMap(({ from, to }) => [from, to])) (seen.has(address) ? shared : seen).add(address);
  const terminals = [...shared].map((address) => ({ part: splitAddress(address)[0], address }));
  sharedBy.set(wires, terminals);
  return terminals;
}

/** A dot wherever two or more wires share a terminal. */
function jointsOf(wires: readonly Wire[], partAt: PartsById): Point[] {
  return sharedTerminals(wires).flatMap(({ part, address }) => {
    const terminal = partAt.get(part)?.terminals.find((each) => each.address === address);
    return terminal === undefined ? [] : [terminal.at];
  });
}

function boxOfDrawing(parts: readonly PartPicture[], wires: readonly WirePicture[]): Box {
  const hulls = [hullOf(parts), hullOf(wires)].filter((hull) => hull !== null);
  return hulls.length === 0 ? { left: 0, top: 0, right: 0, bottom: 0 } : hulls.reduce(unionBox);
}

function hullOf(items: readonly { readonly extent: Box }[]): Box | null {
  if (items.length === 0) return null;
  let { left, top, right, bottom } = items[0]!.extent;
  for (const { extent } of items) {
    if (extent.left < left) left = extent.left;
    if (extent.top < top) top = extent.top;
    if (extent.right > right) right = extent.right;
    if (extent.bottom > bottom) bottom = extent.bottom;
  }
  return { left, top, right, bottom };
}
