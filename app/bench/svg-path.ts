import type { Point } from "../../core/geometry/index.ts";

/** One run of a path as straight pieces. */
export interface Run {
  readonly points: Point[];
  closed: boolean;
}

/** Straight pieces a curve is made of. */
const PIECES = 12;
/** Most points taken from one path. */
const MOST_POINTS = 4000;
/** Numbers each command takes. */
const TAKES: Readonly<Record<string, number>> = { m: 2, l: 2, h: 1, v: 1, c: 6, s: 4, q: 4, t: 2, a: 7, z: 0 };

/**
 * The `d` of an SVG path as runs of straight pieces, in its own units (SVG 2, chapter 9: Paths). As the standard says of errors in
 * path data, it is drawn up to the first thing that makes no sense.
 */
export function runsOfPath(d: string): Run[] {
  const walk = new Walk();
  const tokens = tokensOf(d);
  let command = "";
  for (let at = 0; at < tokens.length && walk.count < MOST_POINTS;) {
    const token = tokens[at]!;
    if (typeof token === "string") {
      command = token;
      at += 1;
    } else if (command === "" || command.toLowerCase() === "z") break;
    const takes = TAKES[command.toLowerCase()]!;
    const numbers = tokens.slice(at, at + takes);
    if (numbers.length < takes || !numbers.every((one) => typeof one === "number")) break;
    if (!walk.go(command, numbers)) break;
    at += takes;
    // Further pairs after a move are lines.
    if (command === "m") command = "l";
    if (command === "M") command = "L";
  }
  return walk.runs.filter((run) => run.points.length > 1);
}

function tokensOf(d: string): (string | number)[] {
  const found = d.matchAll(/([mlhvcsqtazMLHVCSQTAZ])|([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d{1,3})?)/g);
  const tokens: (string | number)[] = [];
  for (const [all, letter] of found) {
    if (tokens.length >= 8 * MOST_POINTS) break;
    tokens.push(...(letter ? [letter] : numberTokens(all, tokens)));
  }
  return tokens;
}

/** Flags of an arc may be written without a gap: "a1 1 0 0110 10". */
function numberTokens(written: string, before: readonly (string | number)[]): number[] {
  const lastLetter = before.findLastIndex((token) => typeof token === "string");
  const isArc = String(before[lastLetter] ?? "").toLowerCase() === "a";
  const place = (before.length - lastLetter - 1) % 7;
  if (!isArc || (place !== 3 && place !== 4) || !/^[01]/.test(written) || written.length === 1)
    return [Number(written)];
  const rest = written.slice(1);
  return [Number(written[0]), ...numberTokens(rest, [...before, Number(written[0])])];
}

class Walk {
  readonly runs: Run[] = [];
  count = 0;
  #at: Point = [0, 0];
  #start: Point = [0, 0];
  /** Last control point, for the smooth curves. */
  #control: Point | null = null;
  #curve: "c" | "q" | null = null;

  /** False when it leads nowhere: the numbers are too big to mean anything. */
  go(command: string, numbers: readonly number[]): boolean {
    const lower = command.toLowerCase();
    const [x0, y0] = command === lower ? this.#at : [0, 0];
    const spot = (at: number): Point => [x0 + numbers[at]!, y0 + numbers[at + 1]!];
    const smooth = (of: "c" | "q"): Point =>
      this.#curve === of && this.#control !== null
        ? [2 * this.#at[0] - this.#control[0], 2 * this.#at[1] - this.#control[1]]
        : this.#at;
    switch (lower) {
      case "m":
        return this.#begin(spot(0));
      case "z":
        return this.#close();
      case "l":
        return this.#line(spot(0));
      case "h":
        return this.#line([x0 + numbers[0]!, this.#at[1]]);
      case "v":
        return this.#line([this.#at[0], y0 + numbers[0]!]);
      case "c":
        return this.#bend([this.#at, spot(0), spot(2), spot(4)], "c");
      case "s":
        return this.#bend([this.#at, smooth("c"), spot(0), spot(2)], "c");
      case "q":
        return this.#bend([this.#at, spot(0), spot(2)], "q");
      case "t":
        return this.#bend([this.#at, smooth("q"), spot(0)], "q");
      default:
        return this.#arc(numbers, spot(5));
    }
  }

  #begin(at: Point): boolean {
    if (!isSane(at)) return false;
    this.runs.push({ points: [at], closed: false });
    this.#start = at;
    return this.#arrive(at);
  }

  #close(): boolean {
    const run = this.runs.at(-1);
    if (run === undefined) return false;
    run.closed = true;
    return this.#arrive(this.#start);
  }

  #line(to: Point): boolean {
    return this.#add(to) && this.#arrive(to);
  }

  /** Points of a Bézier curve by repeated halving between its control points at equal steps (de Casteljau). */
  #bend(controls: readonly Point[], curve: "c" | "q"): boolean {
    for (let piece = 1; piece <= PIECES; piece += 1) if (!this.#add(onCurve(controls, piece / PIECES))) return false;
    this.#arrive(controls.at(-1)!);
    this.#control = controls.at(-2)!;
    this.#curve = curve;
    return true;
  }

  #arc(numbers: readonly number[], to: Point): boolean {
    for (const point of arcPoints(this.#at, numbers, to)) if (!this.#add(point)) return false;
    return this.#arrive(to);
  }

  #add(point: Point): boolean {
    if (!isSane(point)) return false;
    const run = this.runs.at(-1);
    if (run === undefined) return false;
    // After a closed run the pen goes on from where that one began.
    if (run.closed) this.runs.push({ points: [this.#at, point], closed: false });
    else run.points.push(point);
    this.count += 1;
    return this.count < MOST_POINTS;
  }

  #arrive(at: Point): boolean {
    this.#at = at;
    this.#control = null;
    this.#curve = null;
    return true;
  }
}

function isSane([x, y]: Point): boolean {
  return Math.abs(x) < 1e7 && Math.abs(y) < 1e7;
}

function onCurve(controls: readonly Point[], share: number): Point {
  let level = controls;
  while (level.length > 1)
    level = level.slice(1).map(([x, y], at): Point => {
      const [fromX, fromY] = level[at]!;
      return [fromX + (x - fromX) * share, fromY + (y - fromY) * share];
    });
  return level[0]!;
}

/** An elliptical arc from end points to straight pieces (SVG 2, appendix B.2.4: conversion from endpoint to centre parameterization). */
function arcPoints([x1, y1]: Point, numbers: readonly number[], [x2, y2]: Point): Point[] {
  const [rawX = 0, rawY = 0, turn = 0, large = 0, sweep = 0] = numbers;
  let [rx, ry] = [Math.abs(rawX), Math.abs(rawY)];
  if (rx < 1e-9 || ry < 1e-9 || (x1 === x2 && y1 === y2)) return [[x2, y2]];
  const phi = (turn * Math.PI) / 180;
  const [cos, sin] = [Math.cos(phi), Math.sin(phi)];
  const [halfX, halfY] = [(x1 - x2) / 2, (y1 - y2) / 2];
  const [px, py] = [cos * halfX + sin * halfY, -sin * halfX + cos * halfY];
  const lack = (px / rx) ** 2 + (py / ry) ** 2;
  if (lack > 1) [rx, ry] = [rx * Math.sqrt(lack), ry * Math.sqrt(lack)];
  const over = rx ** 2 * py ** 2 + ry ** 2 * px ** 2;
  const root = Math.sqrt(Math.max(0, (rx ** 2 * ry ** 2 - over) / over)) * ((large !== 0) === (sweep !== 0) ? -1 : 1);
  const [cpx, cpy] = [(root * rx * py) / ry, (-root * ry * px) / rx];
  const [cx, cy] = [cos * cpx - sin * cpy + (x1 + x2) / 2, sin * cpx + cos * cpy + (y1 + y2) / 2];
  const start = Math.atan2((py - cpy) / ry, (px - cpx) / rx);
  let swept = Math.atan2((-py - cpy) / ry, (-px - cpx) / rx) - start;
  if (sweep !== 0 && swept < 0) swept += 2 * Math.PI;
  if (sweep === 0 && swept > 0) swept -= 2 * Math.PI;
  const pieces = Math.max(2, Math.ceil((Math.abs(swept) / (2 * Math.PI)) * 32));
  return Array.from({ length: pieces }, (_, at): Point => {
    if (at + 1 === pieces) return [x2, y2];
    const angle = start + (swept * (at + 1)) / pieces;
    const [ex, ey] = [rx * Math.cos(angle), ry * Math.sin(angle)];
    return [cx + cos * ex - sin * ey, cy + sin * ex + cos * ey];
  });
}
