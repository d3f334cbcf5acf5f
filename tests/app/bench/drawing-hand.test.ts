import { describe, expect, it, test } from "vitest";
import { finish, pieceAt, press, takePen, write, type Pen, type Turn } from "../../../app/bench/drawing-hand.ts";
import { arcThrough, distanceToStroke } from "../../../app/bench/strokes.ts";
import { BLANK_SYMBOL, type BenchSymbol } from "../../../app/bench/symbol.ts";
import type { Point } from "../../../core/geometry/index.ts";
import { buzzer } from "./buzzer.ts";

function draw(pen: Pen, spots: readonly Point[], symbol: BenchSymbol = BLANK_SYMBOL): Turn {
  return spots.reduce<Turn>((turn, at) => press(turn.hand, turn.symbol, at), { hand: takePen(pen), symbol });
}

describe("pens", () => {
  it("draw a line from press to press, ended by a press on its last spot", () => {
    const spots: Point[] = [
      [0, 0],
      [2, 0],
      [2, 3],
    ];
    expect(draw("line", [...spots, [2, 3]]).symbol.drawing).toEqual([{ shape: "line", points: spots }]);
    const { hand, symbol } = draw("line", spots);
    expect(finish(hand, symbol).symbol.drawing).toEqual([{ shape: "line", points: spots }]);
  });

  it("close a line that comes back to its start", () => {
    expect(
      draw("line", [
        [0, 0],
        [2, 0],
        [2, 3],
        [0, 0],
      ]).symbol.drawing,
    ).toMatchObject([{ closed: true }]);
  });

  it("draw a box and a circle from two spots, and nothing from one twice", () => {
    expect(
      draw("box", [
        [0, 0],
        [3, 2],
      ]).symbol.drawing,
    ).toMatchObject([{ shape: "line", closed: true }]);
    expect(
      draw("circle", [
        [0, 0],
        [3, 4],
      ]).symbol.drawing,
    ).toEqual([{ shape: "circle", centre: [0, 0], radius: 5 }]);
    expect(
      draw("box", [
        [0, 0],
        [0, 0],
      ]).symbol.drawing,
    ).toEqual([]);
    expect(
      draw("circle", [
        [0, 0],
        [0, 0],
      ]).symbol.drawing,
    ).toEqual([]);
  });

  it("write at most what a file takes, and nothing of blanks", () => {
    const { hand, symbol } = draw("text", [[1, 1]]);
    expect(write(hand, symbol, "x".repeat(40), 1).symbol.drawing).toMatchObject([{ text: "x".repeat(24) }]);
    expect(write(hand, symbol, "  ", 1).symbol.drawing).toEqual([]);
  });

  it("place terminals under the next free name, leaving away from the middle, one to a spot", () => {
    const { symbol } = draw(
      "terminal",
      [
        [0, 0],
        [6, 0],
        [6, 0],
      ],
      { ...buzzer, terminals: [] },
    );
    expect(symbol.terminals).toMatchObject([
      { name: "1", exit: "left" },
      { name: "2", exit: "right" },
    ]);
  });

  it("move what is taken up, and erase what lies under them", () => {
    expect(
      draw(
        "move",
        [
          [0, 0],
          [0, 2],
        ],
        buzzer,
      ).symbol.terminals[0]?.at,
    ).toEqual([0, 2]);
    expect(
      draw(
        "move",
        [
          [3, -2],
          [3, -1.5],
        ],
        buzzer,
      ).symbol.drawing[0],
    ).toMatchObject({
      points: [
        [1, -1.5],
        [5, -1.5],
        [5, 2.5],
        [1, 2.5],
      ],
    });
    expect(draw("erase", [[1, 1]], buzzer).symbol.drawing).toEqual([]);
    expect(draw("erase", [[20, 20]], buzzer).symbol).toBe(buzzer);
  });

  it("draw no more strokes than a file holds", () => {
    const full = { ...buzzer, drawing: Array.from({ length: 400 }, () => buzzer.drawing[0]!) };
    expect(
      draw(
        "box",
        [
          [0, 0],
          [3, 2],
        ],
        full,
      ).symbol,
    ).toBe(full);
  });
});

describe("an arc through three spots", () => {
  test.each<[string, Point, number, number]>([
    ["above", [0, -2], 180, 0],
    ["below", [0, 2], 0, 180],
  ])("bends %s", (_name, through, start, end) => {
    expect(arcThrough([-2, 0], [2, 0], through)).toEqual({ shape: "arc", centre: [0, 0], radius: 2, start, end });
  });

  it("is a straight line when the three lie on one", () => {
    expect(arcThrough([0, 0], [4, 0], [2, 0])).toMatchObject({ shape: "line" });
  });
});

describe("what lies under a spot", () => {
  it("is a terminal before a stroke", () => {
    expect(pieceAt(buzzer, [0.3, 0])).toEqual({ piece: "terminal", index: 0 });
    expect(pieceAt(buzzer, [1, 1])).toEqual({ piece: "stroke", index: 0 });
    expect(pieceAt(buzzer, [3, 0])).toBeNull();
  });

  it("is an arc only along the way it runs", () => {
    const arc = { shape: "arc", centre: [0, 0], radius: 2, start: 180, end: 0 } as const;
    expect(distanceToStroke(arc, [0, -2])).toBeCloseTo(0, 9);
    expect(distanceToStroke(arc, [0, 2])).toBeCloseTo(Math.hypot(2, 2), 9);
  });
});
