import { boxOfPoints, boxOfStroke, unionBox, type Point, type Stroke } from "../../core/geometry/index.ts";
import { MOST_STROKES } from "./drawing-hand.ts";
import { tidy } from "./strokes.ts";
import { chained, growth, matrixOf, numbersIn, PLAIN, placed, type Matrix } from "./svg-matrix.ts";
import { runsOfPath } from "./svg-path.ts";
import { MOST_LETTERS, svgTags, type SvgTag } from "./svg-tags.ts";

export interface Reduced {
  readonly strokes: readonly Stroke[];
  /** What the picture had that a symbol can't have, in words; empty when nothing was left out. */
  readonly leftOut: readonly string[];
}

/** The room a pasted picture is fitted into, grid steps. */
const ROOM = { left: 0, top: -3, width: 8, height: 6 };
const MOST_POINTS = 200;
const MOST_DEPTH = 200;
/** Pictures in these are never drawn by themselves, or hold what is no drawing. */
const PASSED: ReadonlySet<string> = new Set(
  "script style foreignobject defs symbol clippath mask pattern marker lineargradient radialgradient filter metadata title desc a11y switch animate animatemotion animatetransform set use image iframe object embed audio video".split(
    " ",
  ),
);

/** What of the open tags holds for the next shape. */
interface Level {
  readonly name: string;
  readonly matrix: Matrix;
  readonly isPassed: boolean;
  readonly isFilled: boolean;
  readonly isDrawn: boolean;
}

/**
 * A pasted SVG as strokes of a symbol: lines, circles and short texts, fitted into the room of a symbol. Curves become straight
 * pieces. Scripts, links, styles, pictures, foreign content and everything else are dropped; nothing is ever loaded or run, and
 * the time it takes grows only with the length of the text.
 */
export function svgToStrokes(svg: string): Reduced {
  const leftOut = new Set<string>();
  if (svg.length > MOST_LETTERS) leftOut.add("what comes after the first million letters");
  const strokes: Stroke[] = [];
  const levels: Level[] = [{ name: "", matrix: PLAIN, isPassed: false, isFilled: false, isDrawn: true }];
  let lettering: { readonly tag: SvgTag; readonly level: Level } | null = null;
  for (const tag of svgTags(svg)) {
    const level = levels.at(-1)!;
    if (tag.type === "text") {
      if (lettering !== null && !level.isPassed) strokes.push(...textStroke(tag.text, lettering.tag, lettering.level));
    } else if (tag.type === "close") {
      const opened = levels.findLastIndex(({ name }) => name === tag.name);
      if (opened > 0) levels.length = opened;
      if (tag.name === "text") lettering = null;
    } else {
      const inner = levelOf(tag, level);
      if (PASSED.has(tag.name)) leftOut.add(wordsFor(tag.name));
      else if (!inner.isPassed && inner.isDrawn) strokes.push(...strokesOf(tag, inner));
      if ((tag.name === "text" || tag.name === "tspan") && !inner.isPassed) lettering = { tag, level: inner };
      if (!tag.isEmpty && levels.length < MOST_DEPTH) levels.push(inner);
    }
    if (strokes.length > MOST_STROKES) break;
  }
  if (strokes.length > MOST_STROKES) leftOut.add(`strokes beyond the first ${MOST_STROKES}`);
  return { strokes: fitted(strokes.slice(0, MOST_STROKES)), leftOut: [...leftOut] };
}

function levelOf({ name, attributes }: SvgTag, outer: Level): Level {
  const fill = attributes.get("fill");
  const stroke = attributes.get("stroke");
  const isFilled = fill === undefined ? outer.isFilled : isInk(fill) && !isInk(stroke);
  return {
    name,
    matrix: chained(outer.matrix, matrixOf(attributes.get("transform"))),
    isPassed: outer.isPassed || PASSED.has(name),
    isFilled,
    isDrawn: outer.isDrawn && attributes.get("display") !== "none" && attributes.get("visibility") !== "hidden",
  };
}

function isInk(paint: string | undefined): boolean {
  return paint !== undefined && !/^\s*(none|transparent|white|#f{3}|#f{6})\s*$/i.test(paint);
}

function strokesOf({ name, attributes }: SvgTag, { matrix, isFilled }: Level): Stroke[] {
  const number = (key: string) => {
    const value = Number.parseFloat(attributes.get(key) ?? "0");
    return Number.isFinite(value) ? value : 0;
  };
  const outline = (points: readonly Point[], closed: boolean) =>
    lines(
      points.map((point) => placed(matrix, point)),
      closed,
      isFilled,
    );
  switch (name) {
    case "line":
      return outline(
        [
          [number("x1"), number("y1")],
          [number("x2"), number("y2")],
        ],
        false,
      );
    case "polyline":
      return outline(pairs(attributes.get("points")), false);
    case "polygon":
      return outline(pairs(attributes.get("points")), true);
    case "rect":
      return outline(corners(number("x"), number("y"), number("width"), number("height")), true);
    case "circle":
      return round(matrix, [number("cx"), number("cy")], number("r"), number("r"), isFilled);
    case "ellipse":
      return round(matrix, [number("cx"), number("cy")], number("rx"), number("ry"), isFilled);
    case "path":
      return runsOfPath(attributes.get("d") ?? "").flatMap((run) => outline(run.points, run.closed));
    default:
      return [];
  }
}

function corners(x: number, y: number, width: number, height: number): Point[] {
  if (!(width > 0 && height > 0)) return [];
  return [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
}

function pairs(text: string | undefined): Point[] {
  const numbers = numbersIn(text ?? "");
  return Array.from({ length: numbers.length >> 1 }, (_, at): Point => [numbers[2 * at]!, numbers[2 * at + 1]!]);
}

/** A circle stays one where it is not pressed flat; else it is an outline of straight pieces. */
function round(matrix: Matrix, centre: Point, rx: number, ry: number, isFilled: boolean): Stroke[] {
  if (!(rx > 0 && ry > 0)) return [];
  const [a, b, c, d] = matrix;
  const isEven = Math.abs(Math.hypot(a, b) - Math.hypot(c, d)) < 1e-6 && Math.abs(a * c + b * d) < 1e-6;
  if (rx === ry && isEven)
    return sound([
      { shape: "circle", centre: placed(matrix, centre), radius: rx * growth(matrix), ...(isFilled && { fill: true }) },
    ]);
  const points = Array.from({ length: 32 }, (_, at): Point => {
    const angle = (at * Math.PI) / 16;
    return placed(matrix, [centre[0] + rx * Math.cos(angle), centre[1] + ry * Math.sin(angle)]);
  });
  return lines(points, true, isFilled);
}

/** Lines of at most so many points; a longer one goes on in the next. */
function lines(points: readonly Point[], closed: boolean, isFilled: boolean): Stroke[] {
  const kept = points.filter(
    (point, at) => at === 0 || point[0] !== points[at - 1]![0] || point[1] !== points[at - 1]![1],
  );
  if (kept.length < 2 || !kept.flat().every(Number.isFinite)) return [];
  if (kept.length <= MOST_POINTS)
    return [{ shape: "line", points: kept, ...(closed && { closed }), ...(closed && isFilled && { fill: true }) }];
  const all = closed ? [...kept, kept[0]!] : kept;
  const pieces: Stroke[] = [];
  for (let from = 0; from + 1 < all.length; from += MOST_POINTS - 1)
    pieces.push({ shape: "line", points: all.slice(from, from + MOST_POINTS) });
  return pieces;
}

function textStroke(words: string, { attributes }: SvgTag, { matrix, isDrawn }: Level): Stroke[] {
  const text = words.replace(/\s+/g, " ").trim().slice(0, 24);
  if (text === "" || !isDrawn) return [];
  const number = (key: string, usual: number) => numbersIn(attributes.get(key) ?? "")[0] ?? usual;
  const size = number("font-size", 12);
  const [x, y] = placed(matrix, [number("x", 0), number("y", 0) - size * 0.36]);
  const anchor = ({ middle: "middle", end: "end" } as const)[attributes.get("text-anchor") ?? ""] ?? "start";
  return sound([{ shape: "text", centre: [x, y], text, size: size * growth(matrix), anchor }]);
}

/** Without those whose numbers mean nothing, or that have no size. */
function sound(strokes: readonly Exclude<Stroke, { shape: "line" }>[]): Stroke[] {
  const isSound = (value: number) => Number.isFinite(value) && Math.abs(value) < 1e9;
  const hasSize = (value: number) => isSound(value) && value > LEAST_SPAN;
  return strokes.filter(
    (stroke) => stroke.centre.every(isSound) && hasSize("radius" in stroke ? stroke.radius : stroke.size),
  );
}

/** Anything smaller is a point to us, in the picture's own units. */
const LEAST_SPAN = 1e-6;

/** As large as the room allows, in its middle; texts as large as they may be in a symbol. */
function fitted(strokes: readonly Stroke[]): Stroke[] {
  const points = strokes.flatMap((stroke) => (stroke.shape === "line" ? stroke.points : []));
  const rounds = strokes.filter((stroke) => stroke.shape !== "line").map(boxOfStroke);
  const boxes = [...[boxOfPoints(points)].filter((box) => box !== null), ...rounds];
  if (boxes.length === 0) return [];
  const box = boxes.reduce(unionBox);
  const span = (from: number, to: number) => Math.max(to - from, LEAST_SPAN);
  const scale = Math.min(ROOM.width / span(box.left, box.right), ROOM.height / span(box.top, box.bottom), 1e6);
  const shift: Point = [
    ROOM.left + (ROOM.width - (box.right - box.left) * scale) / 2,
    ROOM.top + (ROOM.height - (box.bottom - box.top) * scale) / 2,
  ];
  const move = ([x, y]: Point): Point => [
    tidy((x - box.left) * scale + shift[0]),
    tidy((y - box.top) * scale + shift[1]),
  ];
  return strokes.flatMap((stroke): Stroke[] => {
    if (stroke.shape === "line") return lines(stroke.points.map(move), stroke.closed ?? false, stroke.fill ?? false);
    const centre = move(stroke.centre);
    if (stroke.shape === "text")
      return [{ ...stroke, centre, size: Math.min(5, Math.max(0.2, tidy(stroke.size * scale))) }];
    const radius = tidy(stroke.radius * scale);
    return radius < 0.01 ? [] : [{ ...stroke, centre, radius: Math.min(100, radius) }];
  });
}

function wordsFor(name: string): string {
  if (name === "script" || name.startsWith("animate") || name === "set") return "scripts and movement";
  if (name === "style") return "style sheets";
  if (name === "use" || name === "image" || name === "a11y") return "pictures and pieces loaded from elsewhere";
  if (name === "title" || name === "desc" || name === "metadata") return "titles and notes";
  if (name === "foreignobject" || name === "iframe" || name === "object" || name === "embed") return "foreign content";
  return "patterns, masks and definitions";
}
