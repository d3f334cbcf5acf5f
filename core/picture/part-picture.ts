import type { Document, Part } from "../document/index.ts";
import { unionBox, standBox, standPoint, standSide, standStroke, type Stance } from "../geometry/index.ts";
import { kindOf, settingsOf, type PartKind, type Pose } from "../parts/index.ts";
import { extentOf } from "./extent-of.ts";
import { partLettering } from "./part-lettering.ts";
import type { PartPicture } from "./types.ts";

export type NominalV = 12 | 24;

const AT_REST: Pose = {};
/** By part object: documents are frozen and share unchanged parts, so a part that is the same object looks the same. */
const standing = new WeakMap<Part, { readonly nominalV: NominalV; readonly picture: PartPicture }>();
const posed = new WeakMap<Part, { readonly nominalV: NominalV; readonly pose: Pose; readonly picture: PartPicture }>();

/** How a part stands on the sheet. Parts that were never placed stand at the origin. The answer is shared: don't change it. */
export function partPicture(part: Part, nominalV: NominalV, pose: Pose = AT_REST): PartPicture {
  const atRest = standing.get(part);
  const rest = atRest?.nominalV === nominalV ? atRest.picture : drawAtRest(part, nominalV);
  if (pose.position === undefined && pose.pulledIn === undefined && pose.on === undefined) return rest;
  const last = posed.get(part);
  if (last !== undefined && last.nominalV === nominalV && isSamePose(last.pose, pose)) return last.picture;
  const picture = { ...rest, strokes: strokesOf(part, pose) };
  posed.set(part, { nominalV, pose, picture });
  return picture;
}

/** The document's nominal voltage, 12 V unless it says otherwise. */
export function nominalVOf(document: Document): NominalV {
  return document.system?.nominalV ?? 12;
}

function drawAtRest(part: Part, nominalV: NominalV): PartPicture {
  const kind = kindOfPart(part);
  const settings = settingsOf(part);
  const stance = stanceOf(part);
  const box = standBox(kind.bounds(settings), stance);
  const terminals = kind.terminals(settings).map((terminal) => ({
    address: `${part.id}.${terminal.name}`,
    at: standPoint(terminal.at, stance),
    exit: terminal.anyExit === true ? ("any" as const) : standSide(terminal.exit, stance),
  }));
  const strokes = strokesOf(part, AT_REST);
  const caption = kind.caption(settings, { nominalV, seriesUpper: false });
  const lettering = partLettering({ part, caption, box, terminals, strokes });
  const room = [box, ...lettering.filter(({ role }) => role === "name" || role === "caption").map(extentOf)];
  const extent = lettering.map(extentOf).reduce(unionBox, box);
  const picture: PartPicture = { id: part.id, strokes, box, room, extent, lettering, terminals };
  standing.set(part, { nominalV, picture });
  return picture;
}

function strokesOf(part: Part, pose: Pose) {
  const stance = stanceOf(part);
  return kindOfPart(part)
    .symbol(settingsOf(part), pose)
    .map((stroke) => standStroke(stroke, stance));
}

function kindOfPart(part: Part): PartKind {
  const kind = kindOf(part.kind);
  if (!kind) throw new RangeError(`pictureOf: part "${part.id}" has kind "${part.kind}", which is not registered`);
  return kind;
}

function stanceOf(part: Part): Stance {
  return { at: part.at ?? [0, 0], turn: part.turn ?? 0, flip: part.flip ?? false };
}

function isSamePose(a: Pose, b: Pose): boolean {
  return a.position === b.position && a.pulledIn === b.pulledIn && a.on === b.on;
}
