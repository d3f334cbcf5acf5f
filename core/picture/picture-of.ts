import { type Document, splitAddress, type Wire } from "../document/index.ts";
import { type Box, type Point } from "../geometry/index.ts";
import type { Pose } from "../parts/index.ts";
import { nominalVOf, partPicture } from "./part-picture.ts";
import type { PartPicture, Picture, WirePicture } from "./types.ts";
import { type WireWorks, workWires } from "./wire-pictures.ts";

/** What a picture was worked out from, kept beside it so that the next one need only do what changed. */
interface Work {
  readonly wires: WireWorks;
  readonly parts: ReadonlyMap<string, PartPicture>;
}

const workOf = new WeakMap<Picture, Work>();

/**
 * The whole drawing in grid steps: symbols as they stand, right-angle wire routes clear of symbols, bows at crossings, dots at
 * joints, lettering.
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
  const changed = changedBoxes(before?.parts ?? new Map(), partAt);
  const works = workWires(document.wires, partAt, before?.wires ?? new Map(), changed);
  const wires = Array.from(works.values(), (work) => work.picture);
  const picture = { parts, wires, joints: jointsOf(document.wires, partAt), box: boxOfDrawing(parts, wires) };
  workOf.set(picture, { wires: works, parts: partAt });
  return picture;
}

/** Old and new boxes of parts that came, went, moved or changed their shape. */
function changedBoxes(before: ReadonlyMap<string, PartPicture>, after: ReadonlyMap<string, PartPicture>): Box[] {
  const boxes: Box[] = [];
  for (const [id, part] of after) {
    const old = before.get(id);
    if (old?.room === part.room) continue;
    if (old !== undefined) boxes.push(...old.room);
    boxes.push(...part.room);
  }
  for (const [id, old] of before) if (!after.has(id)) boxes.push(...old.room);
  return boxes;
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
function jointsOf(wires: readonly Wire[], partAt: ReadonlyMap<string, PartPicture>): Point[] {
  return sharedTerminals(wires).flatMap(({ part, address }) => {
    const terminal = partAt.get(part)?.terminals.find((each) => each.address === address);
    return terminal === undefined ? [] : [terminal.at];
  });
}

function boxOfDrawing(parts: readonly PartPicture[], wires: readonly WirePicture[]): Box {
  let { left, top, right, bottom } = parts[0]?.extent ?? { left: 0, top: 0, right: 0, bottom: 0 };
  const take = ({ extent }: PartPicture | WirePicture) => {
    left = Math.min(left, extent.left);
    top = Math.min(top, extent.top);
    right = Math.max(right, extent.right);
    bottom = Math.max(bottom, extent.bottom);
  };
  parts.forEach(take);
  wires.forEach(take);
  return { left, top, right, bottom };
}
