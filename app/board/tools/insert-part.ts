import type { Document, Edit, Part } from "../../../core/document/index.ts";
import { distanceToSegment, type Point } from "../../../core/geometry/index.ts";
import { partPicture, type PartPicture } from "../../../core/picture/index.ts";
import { nextId } from "../../store/ids.ts";
import type { Scene } from "../paint/scene.ts";
import { type Cut, divideWire } from "./divide-wire.ts";
import { nearestWire } from "./picking.ts";

/** A part that fits into a wire where it is held: how it would stand, and where the wire is cut. */
export interface Insertion {
  readonly part: Part;
  readonly picture: PartPicture;
  readonly wireId: string;
  readonly cut: Cut;
}

/** How near a wire must pass the middle of a part to take it in. Grid steps. */
const REACH = 0.8;
const TURNS = [0, 180, 90, 270] as const;

/**
 * Whether a part held here fits into a wire: it has two terminals, and turned one way or the other both come to lie on one
 * run of the wire, the first terminal towards the wire's beginning. `null` when it doesn't.
 */
export function insertionOf(part: Part, scene: Scene, nominalV: 12 | 24): Insertion | null {
  const held = partPicture(part, nominalV);
  if (held.terminals.length !== 2) return null;
  const middle = middleOf(held);
  const hit = nearestWire(scene, middle, REACH);
  const route = hit === null ? undefined : scene.wires.get(hit.id)?.picture.route;
  if (hit === null || route === undefined) return null;
  const run = [route[hit.segment]!, route[hit.segment + 1]!] as const;
  for (const turn of TURNS) {
    const turned: Part = { ...part, turn };
    const shift = middleOf(partPicture(turned, nominalV));
    const at: Part["at"] = [
      Math.round((part.at?.[0] ?? 0) + hit.at[0] - shift[0]),
      Math.round((part.at?.[1] ?? 0) + hit.at[1] - shift[1]),
    ];
    const standing: Part = { ...turned, at };
    const picture = partPicture(standing, nominalV);
    const [first, second] = picture.terminals;
    if (first === undefined || second === undefined || !isAlong(run, first.at, second.at)) continue;
    const cut = { at: first.at, until: second.at, firstTo: first.address, secondFrom: second.address };
    return { part: standing, picture, wireId: hit.id, cut };
  }
  return null;
}

/** The edits that cut the wire open for the part, which itself is put there or moved there. */
export function insertEdits(insertion: Insertion, document: Document, scene: Scene, taken: readonly string[]): Edit[] {
  const wire = document.wires.find(({ id }) => id === insertion.wireId);
  const route = scene.wires.get(insertion.wireId)?.picture.route;
  if (wire === undefined || route === undefined) return [];
  const first = nextId(document, "w", taken);
  const second = nextId(document, "w", [...taken, first]);
  return divideWire(wire, route, insertion.cut, [first, second]);
}

function middleOf({ terminals }: PartPicture): Point {
  const [[ax, ay], [bx, by]] = [terminals[0]!.at, terminals[1]!.at];
  return [(ax + bx) / 2, (ay + by) / 2];
}

/** Both on the run, in its direction. */
function isAlong([from, to]: readonly [Point, Point], first: Point, second: Point): boolean {
  const isOn = distanceToSegment(first, from, to) === 0 && distanceToSegment(second, from, to) === 0;
  return isOn && distance(from, first) < distance(from, second);
}

function distance(a: Point, b: Point): number {
  return Math.abs(b[0] - a[0]) + Math.abs(b[1] - a[1]);
}
