import { NO_OVERLAY } from "../../../app/board/board-overlay.ts";
import type { Frame } from "../../../app/board/paint/frame.ts";
import { drawInk, type Ink } from "../../../app/board/paint/ink.ts";
import { LiveMarks } from "../../../app/board/paint/live-marks.ts";
import { drawLive } from "../../../app/board/paint/live-paint.ts";
import { Painter, viewportOf } from "../../../app/board/paint/painter.ts";
import { Scene } from "../../../app/board/paint/scene.ts";
import { makeTileCanvas } from "../../../app/board/paint/tile-canvas.ts";
import { holdParts, liftHeld } from "../../../app/board/tools/lift.ts";
import type { Document } from "../../../core/document/index.ts";
import { moveBox } from "../../../core/geometry/index.ts";
import type { PartPicture, WirePicture } from "../../../core/picture/index.ts";
import { someMarks } from "./big-drawing.ts";

/** A way to put a frame on a canvas; whether another should follow by itself. */
export type Way = (context: CanvasRenderingContext2D, frame: Frame) => boolean;

/** The Board's own painter, bare. */
export function tilePainter(): Way {
  const painter = new Painter(makeTileCanvas);
  return (context, frame) => painter.paint(context, frame);
}

/** The anchor: the same drawing on the same canvas, all of it in every frame, with the same ink and detail. */
export function fullRedraw(): Way {
  const scene = new Scene();
  const marks = new LiveMarks();
  return (context, frame) => {
    if (scene.picture !== frame.picture) scene.update(frame.picture);
    marks.update(frame.marks, frame.revision, frame.picture);
    const { x, y, stepPx, width, height } = viewportOf(frame);
    const ink: Ink = { context, stepPx: frame.view.scale, palette: frame.palette, lettering: frame.lettering };
    context.setTransform(1, 0, 0, 1, 0, 0);
    context.fillStyle = frame.palette.paper;
    context.fillRect(0, 0, width, height);
    context.setTransform(stepPx, 0, 0, stepPx, x, y);
    const { lift } = frame.overlay;
    const parts = frame.picture.parts.map((part) =>
      lift?.moving.has(part.id) ? shiftedPart(part, lift.dx, lift.dy) : part,
    );
    const wires = frame.picture.wires.map((wire) =>
      lift?.moving.has(wire.id) ? shiftedWire(wire, lift.dx, lift.dy) : wire,
    );
    drawInk(ink, parts, wires, frame.picture.joints);
    drawLive(ink, marks, scene.parts.all(), scene.wires.all(), () => 0);
    return false;
  };
}

function shiftedPart(part: PartPicture, dx: number, dy: number): PartPicture {
  return { ...part, box: moveBox(part.box, dx, dy) };
}

function shiftedWire(wire: WirePicture, dx: number, dy: number): WirePicture {
  return { ...wire, route: wire.route.map(([x, y]) => [x + dx, y + dy] as const) };
}

export type Act = "pan" | "zoom" | "drag one" | "re-mark" | "drag all";
export const ACTS: readonly Act[] = ["pan", "zoom", "drag one", "re-mark", "drag all"];

/** The frames of an act, one after the other, from a resting one. */
export function* framesOf(act: Act, rest: Frame, document: Document, count: number): Generator<Frame> {
  const scene = new Scene();
  scene.update(rest.picture);
  const ids = act === "drag all" ? document.parts.map(({ id }) => id) : ["p5"];
  const held = holdParts(document, new Set(ids));
  for (let i = 1; i <= count; i++) {
    switch (act) {
      case "pan":
        yield {
          ...rest,
          view: { ...rest.view, x: rest.view.x + 3 * swing(i, count), y: rest.view.y + 2 * swing(i, count) },
        };
        break;
      case "zoom":
        yield { ...rest, view: { ...rest.view, scale: rest.view.scale * 1.01 ** swing(i, count) } };
        break;
      case "re-mark":
        yield { ...rest, marks: someMarks(document, rest.revision, i) };
        break;
      default: {
        const lift = liftHeld(held, scene, swing(i, count), Math.floor(swing(i, count) / 2));
        yield { ...rest, selection: held.parts, overlay: { ...NO_OVERLAY, lift } };
      }
    }
  }
}

/** Out and back, so that as much comes into view as goes out of it. */
function swing(i: number, count: number): number {
  return i <= count / 2 ? i : count - i;
}
