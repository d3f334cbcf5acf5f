import { describe, expect, it } from "vitest";
import { wireTool } from "../../../../app/board/tools/wire-tool.ts";
import { lamp, point, sheet, sheetOf, wire } from "../support/sheets.ts";
import { run } from "../support/run-tool.ts";

const apart = sheet([lamp("e1", 0, 0), lamp("e2", 20, 10)]);
const tap = (x: number, y: number) => [point("down", x, y), point("up", x, y)];

describe("drawing a wire", () => {
  it("goes from the terminal pressed first to the one pressed next", () => {
    const { document, transactions } = run(wireTool, sheetOf(apart), [
      ...tap(4, 0.5),
      point("move", 12, 5),
      ...tap(20, 10),
    ]);
    expect(document.wires).toEqual([{ id: "w1", from: "e1.-", to: "e2.+" }]);
    expect(transactions).toHaveLength(1);
  });

  it("goes where a drag is let go", () => {
    const events = [point("down", 4, 0), point("move", 12, 5), point("up", 19.5, 10.2)];
    expect(run(wireTool, sheetOf(apart), events).document.wires).toEqual([{ id: "w1", from: "e1.-", to: "e2.+" }]);
  });

  it("keeps a corner where the bare sheet is pressed, on whole steps", () => {
    const events = [...tap(4, 0), ...tap(9.6, 6.2), ...tap(20, 10)];
    expect(run(wireTool, sheetOf(apart), events).document.wires[0]!.via).toEqual([[10, 6]]);
  });

  it("takes its last corner back, and is given up, by key", () => {
    const events = [...tap(4, 0), ...tap(9, 6), { type: "key", key: "Backspace" } as const, ...tap(20, 10)];
    expect(run(wireTool, sheetOf(apart), events).document.wires[0]).not.toHaveProperty("via");
    const given = run(wireTool, sheetOf(apart), [...tap(4, 0), { type: "key", key: "Escape" }, ...tap(20, 10)]);
    expect(given.transactions).toEqual([]);
  });

  it("shows its right-angle way and what attracts it, and changes nothing meanwhile", () => {
    const { last } = run(wireTool, sheetOf(apart), [...tap(4, 0), point("move", 19, 9.5)]);
    expect(last.overlay.draft?.route.at(-1)).toEqual([20, 10]);
    expect(last.overlay.attract).toEqual([20, 10]);
    expect(last.acts).toEqual([]);
  });

  it("does not end on the terminal it began on", () => {
    expect(run(wireTool, sheetOf(apart), [...tap(4, 0), ...tap(4, 0)]).transactions).toEqual([]);
  });

  it("attracts a gloved thumb from 15 mm away", () => {
    const near = run(wireTool, sheetOf(apart), [point("down", 4, 5.6, { isTouch: true })]);
    expect(near.last.overlay.attract).toEqual([4, 0]);
    const far = run(wireTool, sheetOf(apart), [point("down", 4, 5.8, { isTouch: true })]);
    expect(far.last.overlay.attract).toBeNull();
  });

  it("takes the nearest of several terminals within reach", () => {
    const close = sheet([lamp("e1", 0, 0), lamp("e2", 6, 0)]);
    const { last } = run(wireTool, sheetOf(close), [point("down", 5.3, 1, { isTouch: true })]);
    expect(last.overlay.attract).toEqual([6, 0]);
  });
});

describe("a wire dropped on a wire", () => {
  const particulars = {
    size: "14 AWG",
    metres: 2,
    colour: "RD",
    label: "L1",
    ends: { from: { terminal: "ring" }, to: { terminal: "tab" } },
  };
  const joined = sheet(
    [lamp("e1", 0, 0), lamp("e2", 20, 0), lamp("e3", 10, 10)],
    [wire("w1", "e1.-", "e2.+", particulars)],
  );
  const drop = [...tap(10, 10), ...tap(8, 0)];

  it("makes a splice there: two wires of one, and the new wire", () => {
    const { document, transactions } = run(wireTool, sheetOf(joined), drop);
    expect(transactions).toHaveLength(1);
    expect(document.parts.at(-1)).toEqual({ id: "j1", kind: "splice", at: [8, 0] });
    expect(document.wires.map(({ from, to }) => `${from} ${to}`)).toEqual(["e1.- j1.s", "j1.s e2.+", "e3.+ j1.s"]);
  });

  it("keeps settings on both pieces and shares the length out as drawn", () => {
    const [first, second] = run(wireTool, sheetOf(joined), drop).document.wires;
    expect(first).toMatchObject({
      size: "14 AWG",
      colour: "RD",
      metres: 0.5,
      label: "L1a",
      ends: { from: { terminal: "ring" } },
    });
    expect(second).toMatchObject({
      size: "14 AWG",
      colour: "RD",
      metres: 1.5,
      label: "L1b",
      ends: { to: { terminal: "tab" } },
    });
    expect(first!.ends).not.toHaveProperty("to");
  });

  it("leaves an unknown length unknown", () => {
    const unknown = sheet(joined.parts, [wire("w1", "e1.-", "e2.+")]);
    const { document } = run(wireTool, sheetOf(unknown), drop);
    for (const each of document.wires) expect(each).not.toHaveProperty("metres");
  });
});
