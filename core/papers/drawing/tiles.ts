import { boxOfPoints, growBox, unionBox, type Box, type Point } from "../../geometry/index.ts";
import type { PartPicture, Picture, WirePicture } from "../../picture/index.ts";

/** A length of a wire on one page. `cuts`: which of its ends run on to another page. */
export interface WirePiece {
  readonly wire: WirePicture;
  readonly route: readonly Point[];
  readonly cuts: { readonly start: boolean; readonly end: boolean };
}

/** What one page shows: whole parts, and wires cut at its edge where they run on. Grid steps. */
export interface Tile {
  readonly box: Box;
  readonly parts: readonly PartPicture[];
  readonly wires: readonly WirePiece[];
}

interface Region {
  readonly bounds: Box;
  readonly parts: readonly PartPicture[];
}

/** Grid steps kept round the outermost symbol for its lettering. */
const RIM = 1;

/**
 * The picture cut into tiles of at most `most` grid steps, along lines that go through as few symbols as can be; a symbol is
 * never cut: it stands whole on the page its middle is on. A picture that fits is one tile.
 */
export function tilesOf(picture: Picture, most: { readonly width: number; readonly height: number }): Tile[] {
  const whole = picture.parts.reduce((box, part) => unionBox(box, part.box), drawnBox(picture));
  const regions = partedRegion({ bounds: growBox(whole, RIM), parts: picture.parts }, most);
  return regions.map(({ bounds, parts }) => ({
    box: parts.reduce((box, part) => unionBox(box, part.box), bounds),
    parts,
    wires: picture.wires.flatMap((wire) => piecesOf(wire, bounds)),
  }));
}

function drawnBox(picture: Picture): Box {
  return (
    boxOfPoints(picture.wires.flatMap((wire) => wire.route)) ??
    picture.parts[0]?.box ?? { left: 0, top: 0, right: 1, bottom: 1 }
  );
}

function partedRegion(region: Region, most: { readonly width: number; readonly height: number }): Region[] {
  const { bounds } = region;
  const [overX, overY] = [(bounds.right - bounds.left) / most.width, (bounds.bottom - bounds.top) / most.height];
  if (Math.max(overX, overY) <= 1 + 1e-9) return [region];
  const axis = overX >= overY ? 0 : 1;
  const pages = Math.ceil(Math.max(overX, overY) - 1e-9);
  const at = bestCut(region, axis, Math.floor(pages / 2) / pages, axis === 0 ? most.width : most.height);
  return splitRegion(region, axis, at).flatMap((half) => partedRegion(half, most));
}

/** Halfway between grid lines, so that no wire runs along the cut: through the fewest symbols, then nearest the fraction wanted. */
function bestCut({ bounds, parts }: Region, axis: 0 | 1, fraction: number, most: number): number {
  const [from, to] = axis === 0 ? [bounds.left, bounds.right] : [bounds.top, bounds.bottom];
  const wanted = from + (to - from) * fraction;
  let best = { at: Math.floor(wanted) + 0.5, cost: Infinity };
  for (let at = Math.floor(Math.max(from, wanted - most / 3)) + 0.5; at < Math.min(to, wanted + most / 3); at++) {
    const through = parts.filter(({ box }) =>
      axis === 0 ? box.left < at && box.right > at : box.top < at && box.bottom > at,
    );
    const cost = through.length * 1000 + Math.abs(at - wanted);
    if (cost < best.cost) best = { at, cost };
  }
  return best.at;
}

function splitRegion({ bounds, parts }: Region, axis: 0 | 1, at: number): [Region, Region] {
  const middle = ({ box }: PartPicture) => (axis === 0 ? box.left + box.right : box.top + box.bottom) / 2;
  const [first, second] = axis === 0 ? [{ right: at }, { left: at }] : [{ bottom: at }, { top: at }];
  return [
    { bounds: { ...bounds, ...first }, parts: parts.filter((part) => middle(part) <= at) },
    { bounds: { ...bounds, ...second }, parts: parts.filter((part) => middle(part) > at) },
  ];
}

/** The stretches of a wire's route inside a box. */
function piecesOf(wire: WirePicture, box: Box): WirePiece[] {
  const pieces: WirePiece[] = [];
  let open: Point[] = [];
  let startCut = false;
  const close = (endCut: boolean) => {
    if (open.length > 1) pieces.push({ wire, route: open, cuts: { start: startCut, end: endCut } });
    open = [];
  };
  for (let at = 1; at < wire.route.length; at++) {
    const [a, b] = [wire.route[at - 1]!, wire.route[at]!];
    const inside = clipped(a, b, box);
    if (inside === null) continue;
    if (open.length === 0) {
      startCut = !samePoint(inside[0], wire.route[0]!);
      open = [inside[0]];
    }
    open.push(inside[1]);
    if (!samePoint(inside[1], b)) close(true);
  }
  close(false);
  return pieces;
}

/** A level or upright segment inside the box; `null` when it misses. */
function clipped(a: Point, b: Point, box: Box): [Point, Point] | null {
  const clamp = ([x, y]: Point): Point => [
    Math.min(box.right, Math.max(box.left, x)),
    Math.min(box.bottom, Math.max(box.top, y)),
  ];
  const misses =
    Math.max(a[0], b[0]) < box.left ||
    Math.min(a[0], b[0]) > box.right ||
    Math.max(a[1], b[1]) < box.top ||
    Math.min(a[1], b[1]) > box.bottom;
  return misses ? null : [clamp(a), clamp(b)];
}

function samePoint(a: Point, b: Point): boolean {
  return a[0] === b[0] && a[1] === b[1];
}
