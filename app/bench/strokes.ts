import { distanceToSegment, type Point, type Stroke } from "../../core/geometry/index.ts";

/** The stroke moved by so many grid steps. */
export function moved(stroke: Stroke, [dx, dy]: Point): Stroke {
  const shift = ([x, y]: Point): Point => [tidy(x + dx), tidy(y + dy)];
  return stroke.shape === "line"
    ? { ...stroke, points: stroke.points.map(shift) }
    : { ...stroke, centre: shift(stroke.centre) };
}

/** Hundredths of a step: finer than any eye, short in the file. */
export function tidy(value: number): number {
  return Math.round(value * 100) / 100 + 0;
}

/** Box with its corners at two spots; `null` when it would have no width or height. */
export function boxBetween([ax, ay]: Point, [bx, by]: Point): Stroke | null {
  if (ax === bx || ay === by) return null;
  return {
    shape: "line",
    points: [
      [ax, ay],
      [bx, ay],
      [bx, by],
      [ax, by],
    ],
    closed: true,
  };
}

export function circleThrough(centre: Point, rim: Point): Stroke | null {
  const radius = tidy(distance(centre, rim));
  return radius < 0.01 || radius > 100 ? null : { shape: "circle", centre, radius };
}

/** Arc from one spot to another by way of a third; a straight line when the three lie on one, `null` when two are the same. */
export function arcThrough(start: Point, end: Point, through: Point): Stroke | null {
  const straight: Stroke = { shape: "line", points: [start, end] };
  if (distance(start, end) < 0.01) return null;
  if (distance(start, through) < 0.01 || distance(end, through) < 0.01) return straight;
  const [[ax, ay], [bx, by], [cx, cy]] = [start, through, end];
  const twice = 2 * (ax * (by - cy) + bx * (cy - ay) + cx * (ay - by));
  if (Math.abs(twice) < 1e-6) return straight;
  const [a2, b2, c2] = [ax * ax + ay * ay, bx * bx + by * by, cx * cx + cy * cy];
  const centre: Point = [
    (a2 * (by - cy) + b2 * (cy - ay) + c2 * (ay - by)) / twice,
    (a2 * (cx - bx) + b2 * (ax - cx) + c2 * (bx - ax)) / twice,
  ];
  const radius = distance(centre, start);
  if (radius > 100 || Math.abs(centre[0]) > 100 || Math.abs(centre[1]) > 100) return straight;
  const angle = ([x, y]: Point) => ((Math.atan2(y - centre[1], x - centre[0]) * 180) / Math.PI + 360) % 360;
  const isClockwise = twice > 0;
  const [from, to] = isClockwise ? [angle(start), angle(end)] : [angle(end), angle(start)];
  return {
    shape: "arc",
    centre: [tidy(centre[0]), tidy(centre[1])],
    radius: tidy(radius),
    start: Math.round(from * 10) / 10,
    end: Math.round(to * 10) / 10,
  };
}

/** How far a spot is from what is drawn, grid steps; 0 inside a filled shape's outline is not claimed, only its line counts. */
export function distanceToStroke(stroke: Stroke, at: Point): number {
  switch (stroke.shape) {
    case "line": {
      const points = stroke.closed ? [...stroke.points, stroke.points[0]!] : stroke.points;
      return Math.min(...points.slice(1).map((point, index) => distanceToSegment(at, points[index]!, point)));
    }
    case "circle":
      return Math.abs(distance(at, stroke.centre) - stroke.radius);
    case "arc": {
      const angle = (Math.atan2(at[1] - stroke.centre[1], at[0] - stroke.centre[0]) * 180) / Math.PI;
      const turn = (degrees: number) => ((degrees % 360) + 360) % 360;
      if (turn(angle - stroke.start) <= turn(stroke.end - stroke.start))
        return Math.abs(distance(at, stroke.centre) - stroke.radius);
      return Math.min(distance(at, spotOnArc(stroke, stroke.start)), distance(at, spotOnArc(stroke, stroke.end)));
    }
    case "text": {
      const half = (stroke.text.length * stroke.size * 0.58) / 2;
      const [x, y] = stroke.centre;
      return Math.hypot(Math.max(0, Math.abs(at[0] - x) - half), Math.max(0, Math.abs(at[1] - y) - stroke.size / 2));
    }
  }
}

/** A stroke in words, for lists and those who hear the page. */
export function strokeWords(stroke: Stroke): string {
  const spot = ([x, y]: Point) => `${x}, ${y}`;
  switch (stroke.shape) {
    case "line": {
      if (stroke.closed) return `outline of ${stroke.points.length} corners at ${spot(stroke.points[0]!)}`;
      return `line from ${spot(stroke.points[0]!)} to ${spot(stroke.points.at(-1)!)}`;
    }
    case "circle":
      return `circle at ${spot(stroke.centre)}, radius ${stroke.radius}`;
    case "arc":
      return `arc about ${spot(stroke.centre)}, radius ${stroke.radius}`;
    case "text":
      return `text "${stroke.text}" at ${spot(stroke.centre)}`;
  }
}

function spotOnArc({ centre, radius }: { readonly centre: Point; readonly radius: number }, degrees: number): Point {
  const angle = (degrees * Math.PI) / 180;
  return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
}

function distance([ax, ay]: Point, [bx, by]: Point): number {
  return Math.hypot(ax - bx, ay - by);
}
