import { type Box, boxOfPoints, growBox, moveBox, type Point, unionBox } from "../../../core/geometry/index.ts";
import type { PartPicture } from "../../../core/picture/index.ts";
import type { Lead } from "../board-controller.ts";
import type { DraftWire, Lift } from "../board-overlay.ts";
import { placeOnSheet } from "../place-on-sheet.ts";
import type { Frame } from "./frame.ts";
import { drawInk, type Ink, plainWire, traceRoute } from "./ink.ts";
import { traceFinger, traceProbe } from "./lead-shapes.ts";
import type { Scene } from "./scene.ts";
import { endHandles } from "../end-handles.ts";

/** Something drawn on top of the drawing. Two with the same key look the same in the same place. */
export interface Piece {
  readonly key: string;
  /** Spots it may touch. Grid steps. */
  readonly boxes: readonly Box[];
  draw(ink: Ink): void;
}

/** Above this many selected items a moving group is shown by its outline alone. */
const MANY = 60;

/** What the frame shows over the resting drawing and its marks, lowest first. */
export function overlayPieces(frame: Frame, scene: Scene): Piece[] {
  const { overlay } = frame;
  const marginSteps = 8 / frame.view.scale;
  const pieces: Piece[] = [];
  for (const place of frame.spotlight) addIfAny(pieces, spotlight(place, scene, marginSteps));
  pieces.push(...selectionPieces(frame, scene, marginSteps));
  const isDragging = overlay.lift !== null || overlay.draft !== null || overlay.marquee !== null;
  if (overlay.hover !== null && !isDragging) addIfAny(pieces, hover(overlay.hover, scene, marginSteps));
  if (overlay.draft !== null) pieces.push(draft(overlay.draft, marginSteps));
  if (overlay.ghost !== null) pieces.push(ghost(overlay.ghost, marginSteps));
  if (overlay.attract !== null) pieces.push(attract(overlay.attract, marginSteps));
  for (const lead of frame.leads) addIfAny(pieces, leadPiece(lead, scene, frame.view.scale));
  if (overlay.marquee !== null) pieces.push(marquee(overlay.marquee));
  return pieces;
}

function addIfAny(pieces: Piece[], piece: Piece | null): void {
  if (piece !== null) pieces.push(piece);
}

function selectionPieces(frame: Frame, scene: Scene, margin: number): Piece[] {
  const { lift } = frame.overlay;
  const { selection } = frame;
  if (lift !== null && lift.moving.size > MANY) return [groupOutline(lift, scene, margin)];
  const boxes: { readonly id: string; readonly box: Box }[] = [];
  const wires: string[] = [];
  for (const id of selection) {
    const part = scene.parts.get(id);
    const isMoving = lift?.moving.has(id) === true;
    if (part !== null) boxes.push({ id, box: frameOf(part.picture.box, isMoving ? lift : null) });
    else if (scene.wires.get(id) !== null && lift?.hidden.has(id) !== true) wires.push(id);
  }
  const isOnly = selection.size === 1;
  const pieces = wires.map((id) => wireSelection(id, scene, isOnly, margin)).filter((piece) => piece !== null);
  if (boxes.length <= MANY) return [...pieces, ...boxes.map(({ id, box }) => outline(id, [box], margin))];
  const all = boxes.map(({ box }) => box);
  return [...pieces, outline(`${frame.revision}`, all, margin)];
}

function frameOf(box: Box, lift: Lift | null): Box {
  return moveBox(growBox(box, 0.2), lift?.dx ?? 0, lift?.dy ?? 0);
}

/** Hulls of large groups by what is lifted, which stays the same object as long as the drag goes on. */
const hulls = new WeakMap<ReadonlySet<string>, Box>();

function groupOutline(lift: Lift, scene: Scene, margin: number): Piece {
  let hull = hulls.get(lift.moving);
  if (hull === undefined) {
    const boxes = [...lift.moving].flatMap((id) => scene.parts.get(id)?.picture.box ?? []);
    hull = boxes.reduce(unionBox);
    hulls.set(lift.moving, hull);
  }
  return outline("group", [frameOf(hull, lift)], margin);
}

function outline(id: string, boxes: readonly Box[], margin: number): Piece {
  const all = boxes.reduce(unionBox);
  const places = boxes.length === 1 ? `${all.left} ${all.top} ${all.right} ${all.bottom}` : String(boxes.length);
  return {
    key: `selected ${id} ${places}`,
    boxes: [growBox(all, margin)],
    draw({ context, palette, stepPx }) {
      context.beginPath();
      for (const box of boxes) context.roundRect(box.left, box.top, box.right - box.left, box.bottom - box.top, 0.3);
      context.strokeStyle = palette.select;
      context.lineWidth = Math.max(0.09, 1.5 / stepPx);
      context.stroke();
      context.globalAlpha = 0.08;
      context.fillStyle = palette.select;
      context.fill();
      context.globalAlpha = 1;
    },
  };
}

function wireSelection(id: string, scene: Scene, withHandles: boolean, margin: number): Piece | null {
  const wire = scene.wires.get(id);
  if (wire === null) return null;
  const { route } = wire.picture;
  return {
    key: `selected wire ${id} ${withHandles} ${route.join(" ")}`,
    boxes: runBoxes(route, margin + 0.3),
    draw(ink) {
      band(ink, route, ink.palette.select, 0.25, 9);
      if (withHandles) drawHandles(ink, route);
    },
  };
}

/** A square near each end, which can be taken to another terminal, and a bar on each run, which can be moved sideways. */
function drawHandles({ context, palette, stepPx }: Ink, route: readonly Point[]): void {
  const half = 4.5 / stepPx;
  context.beginPath();
  for (const [x, y] of endHandles(route)) context.rect(x - half, y - half, 2 * half, 2 * half);
  for (let i = 2; i < route.length - 1; i++) {
    const [[ax, ay], [bx, by]] = [route[i - 1]!, route[i]!];
    const [alongX, alongY] = ax === bx ? [half / 2, half * 1.4] : [half * 1.4, half / 2];
    context.roundRect((ax + bx) / 2 - alongX, (ay + by) / 2 - alongY, 2 * alongX, 2 * alongY, half / 2);
  }
  context.fillStyle = palette.paper;
  context.fill();
  context.strokeStyle = palette.select;
  context.lineWidth = 1.5 / stepPx;
  context.stroke();
}

function hover(id: string, scene: Scene, margin: number): Piece | null {
  const part = scene.parts.get(id);
  if (part !== null) {
    const box = growBox(part.picture.box, 0.2);
    return {
      key: `hover ${id} ${box.left} ${box.top}`,
      boxes: [growBox(box, margin)],
      draw({ context, palette, stepPx }) {
        context.beginPath();
        context.roundRect(box.left, box.top, box.right - box.left, box.bottom - box.top, 0.3);
        context.globalAlpha = 0.55;
        context.strokeStyle = palette.select;
        context.lineWidth = 1.2 / stepPx;
        context.stroke();
        context.globalAlpha = 1;
      },
    };
  }
  const wire = scene.wires.get(id);
  if (wire === null) return null;
  const { route } = wire.picture;
  return {
    key: `hover ${id} ${route.join(" ")}`,
    boxes: runBoxes(route, margin),
    draw: (ink) => band(ink, route, ink.palette.select, 0.16, 9),
  };
}

/** A place to look at: corner brackets round a part or a terminal, a wide band under a wire. */
function spotlight(place: string, scene: Scene, margin: number): Piece | null {
  const wire = scene.wires.get(place);
  if (wire !== null) {
    const { route } = wire.picture;
    return {
      key: `spot ${place} ${route.join(" ")}`,
      boxes: runBoxes(route, margin + 0.5),
      draw: (ink) => band(ink, route, ink.palette.stop, 0.28, 15),
    };
  }
  const part = scene.parts.get(place);
  const at = placeOnSheet(place, scene);
  if (at === null) return null;
  const box =
    part === null
      ? growBox({ left: at[0], top: at[1], right: at[0], bottom: at[1] }, 0.9)
      : growBox(part.picture.box, 0.7);
  return {
    key: `spot ${place} ${box.left} ${box.top}`,
    boxes: [growBox(box, margin)],
    draw({ context, palette, stepPx }) {
      const arm = Math.min(1, (box.right - box.left) / 3);
      context.beginPath();
      for (const [x, y, dx, dy] of [
        [box.left, box.top, 1, 1],
        [box.right, box.top, -1, 1],
        [box.right, box.bottom, -1, -1],
        [box.left, box.bottom, 1, -1],
      ] as const) {
        context.moveTo(x + dx * arm, y);
        context.lineTo(x, y);
        context.lineTo(x, y + dy * arm);
      }
      context.strokeStyle = palette.stop;
      context.lineWidth = Math.max(0.14, 2.5 / stepPx);
      context.stroke();
    },
  };
}

function draft({ id, route }: DraftWire, margin: number): Piece {
  return {
    key: `draft ${id} ${route.join(" ")}`,
    boxes: runBoxes(route, margin),
    draw({ context, palette, stepPx }) {
      context.beginPath();
      traceRoute(context, plainWire(route), false);
      context.strokeStyle = palette.preview;
      context.lineWidth = Math.max(0.1, 2 / stepPx);
      context.setLineDash([0.5, 0.3]);
      context.stroke();
      context.setLineDash([]);
    },
  };
}

function ghost(part: PartPicture, margin: number): Piece {
  return {
    key: `ghost ${part.box.left} ${part.box.top} ${part.box.right} ${part.box.bottom} ${part.strokes.length}`,
    boxes: [growBox(part.box, margin + 1)],
    draw(ink) {
      const { context, palette } = ink;
      context.globalAlpha = 0.75;
      drawInk(
        { ...ink, palette: { ...palette, ink: palette.preview, faint: palette.preview } },
        [{ ...part, lettering: [] }],
        [],
        [],
      );
      context.globalAlpha = 1;
    },
  };
}

function attract([x, y]: Point, margin: number): Piece {
  return {
    key: `attract ${x} ${y}`,
    boxes: [growBox({ left: x, top: y, right: x, bottom: y }, margin * 2 + 0.5)],
    draw({ context, palette, stepPx }) {
      const radius = Math.max(0.55, 9 / stepPx);
      context.beginPath();
      context.arc(x, y, radius, 0, 2 * Math.PI);
      context.strokeStyle = palette.preview;
      context.lineWidth = 2.5 / stepPx;
      context.stroke();
    },
  };
}

function leadPiece({ at, mark }: Lead, scene: Scene, scale: number): Piece | null {
  const place = placeOnSheet(at, scene);
  if (place === null) return null;
  const [x, y] = place;
  const reach = 34 / scale;
  return {
    key: `lead ${mark} ${x} ${y}`,
    boxes: [growBox({ left: x, top: y, right: x, bottom: y }, reach)],
    draw: (ink) => (mark === "finger" ? traceFinger(ink, x, y) : traceProbe(ink, x, y, mark === "red")),
  };
}

function marquee(box: Box): Piece {
  return {
    key: `marquee ${box.left} ${box.top} ${box.right} ${box.bottom}`,
    boxes: [growBox(box, 0.2)],
    draw({ context, palette, stepPx }) {
      context.beginPath();
      context.rect(box.left, box.top, box.right - box.left, box.bottom - box.top);
      context.globalAlpha = 0.1;
      context.fillStyle = palette.select;
      context.fill();
      context.globalAlpha = 1;
      context.strokeStyle = palette.select;
      context.lineWidth = 1 / stepPx;
      context.setLineDash([4 / stepPx, 3 / stepPx]);
      context.stroke();
      context.setLineDash([]);
    },
  };
}

function band({ context, stepPx }: Ink, route: readonly Point[], colour: string, alpha: number, leastPx: number): void {
  context.beginPath();
  route.forEach(([x, y], i) => (i === 0 ? context.moveTo(x, y) : context.lineTo(x, y)));
  context.globalAlpha = alpha;
  context.strokeStyle = colour;
  context.lineWidth = Math.max(0.5, leastPx / stepPx);
  context.stroke();
  context.globalAlpha = 1;
}

/** One box per run, so that a long wire damages a thin strip and not the rectangle it spans. */
export function runBoxes(route: readonly Point[], margin: number): Box[] {
  return route.slice(1).map((point, i) => growBox(boxOfPoints([route[i]!, point])!, margin + 0.2));
}
