import { type Document, type Wire } from "../document/index.ts";
import { type Box, type Point, unionBox } from "../geometry/index.ts";
import type { Pose } from "../parts/index.ts";
import { nominalVOf, partPicture } from "./part-picture.ts";
import type { PartPicture, Picture } from "./types.ts";
import { extentOf } from "./extent-of.ts";
import { type WireWork, workWires } from "./wire-pictures.ts";

/** What a picture was worked out from, kept beside it so that the next one need only do what changed. */
interface Work {
  readonly wires: ReadonlyMap<string, WireWork>;
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
  const wires = [...works.values()].map((work) => work.picture);
  const picture = { parts, wires, joints: jointsOf(document.wires, works), box: boxOfDrawing(parts, works) };
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

/** A dot wherever two or more wires share a terminal. */
function jointsOf(wires: readonly Wire[], works: ReadonlyMap<string, WireWork>): Point[] {
  const seen = new Map<string, { at: Point; count: number }>();
  for (const { id } of wires) {
    const work = works.get(id);
    if (work === undefined) continue;
    for (const end of [work.from, work.to]) {
      const there = seen.get(end.address);
      if (there === undefined) seen.set(end.address, { at: end.at, count: 1 });
      else there.count++;
    }
  }
  return [...seen.values()].filter(({ count }) => count > 1).map(({ at }) => at);
}

function boxOfDrawing(parts: readonly PartPicture[], works: ReadonlyMap<string, WireWork>): Box {
  let box: Box | null = null;
  const add = (each: Box) => (box = box === null ? each : unionBox(box, each));
  for (const part of parts) {
    add(part.box);
    for (const lettering of part.lettering) add(extentOf(lettering));
  }
  for (const work of works.values()) add(work.extent);
  return box ?? { left: 0, top: 0, right: 0, bottom: 0 };
}
