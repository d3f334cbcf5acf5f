import type { Point } from "../../core/geometry/index.ts";

/** a b c d e f, as SVG writes a matrix: x' = a x + c y + e, y' = b x + d y + f. */
export type Matrix = readonly [number, number, number, number, number, number];

export const PLAIN: Matrix = [1, 0, 0, 1, 0, 0];
const MOST_STEPS = 20;

/** The point, moved. */
export function placed([a, b, c, d, e, f]: Matrix, [x, y]: Point): Point {
  return [a * x + c * y + e, b * x + d * y + f];
}

/** First `inner`, then `outer`. */
export function chained(outer: Matrix, inner: Matrix): Matrix {
  const [a, b, c, d, e, f] = outer;
  const [g, h, i, j, k, l] = inner;
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}

/** How much longer lines get, on average of all directions. */
export function growth([a, b, c, d]: Matrix): number {
  return Math.sqrt(Math.abs(a * d - b * c));
}

/** What a `transform` attribute says; steps it does not know, or that make no number, count for nothing. */
export function matrixOf(transform: string | undefined): Matrix {
  let all = PLAIN;
  let steps = 0;
  for (const [, name = "", inner = ""] of (transform ?? "").slice(0, 2000).matchAll(/([a-zA-Z]+)\s*\(([^()]*)\)/g)) {
    if ((steps += 1) > MOST_STEPS) break;
    const next = chained(all, stepOf(name, numbersIn(inner)));
    if (next.every(Number.isFinite)) all = next;
  }
  return all;
}

/** The numbers of a list parted by blanks or commas. */
export function numbersIn(text: string): number[] {
  return (text.match(/[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d{1,3})?/g) ?? []).map(Number).filter(Number.isFinite);
}

function stepOf(name: string, numbers: readonly number[]): Matrix {
  const [a = 0, b, c] = numbers;
  switch (name) {
    case "matrix":
      return numbers.length === 6 ? (numbers as unknown as Matrix) : PLAIN;
    case "translate":
      return [1, 0, 0, 1, a, b ?? 0];
    case "scale":
      return numbers.length === 0 ? PLAIN : [a, 0, 0, b ?? a, 0, 0];
    case "rotate": {
      const turn: Matrix = [Math.cos(rad(a)), Math.sin(rad(a)), -Math.sin(rad(a)), Math.cos(rad(a)), 0, 0];
      return chained(chained([1, 0, 0, 1, b ?? 0, c ?? 0], turn), [1, 0, 0, 1, -(b ?? 0), -(c ?? 0)]);
    }
    case "skewX":
      return [1, 0, Math.tan(rad(a)), 1, 0, 0];
    case "skewY":
      return [1, Math.tan(rad(a)), 0, 1, 0, 0];
    default:
      return PLAIN;
  }
}

function rad(degrees: number): number {
  return (degrees * Math.PI) / 180;
}
