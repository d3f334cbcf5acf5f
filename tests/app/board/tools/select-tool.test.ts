import { describe, expect, it } from "vitest";
import { selectTool } from "../../../../app/board/tools/select-tool.ts";
import type { Part } from "../../../../core/document/index.ts";
import { lamp, point, sheet, sheetOf, wire } from "../support/sheets.ts";
import { run } from "../support/run-tool.ts";

// A lamp lies from its + at (x, y) to its - at (x + 4, y); its middle is two steps in.
const two = sheet([lamp("e1", 0, 0), lamp("e2", 20, 0)], [wire("w1", "e1.-", "e2.+")]);
const control = (momentary: boolean): Part => ({ id: "s1", kind: "switch", at: [0, 10], props: { momentary } });

describe("a tap", () => {
  it("selects the part under it, and nothing on the bare sheet", () => {
    const part = run(selectTool, sheetOf(two), [point("down", 2, 0.2), point("up", 2, 0.2)]);
    expect([...part.selection]).toEqual(["e1"]);
    const bare = run(selectTool, sheetOf(two, ["e1"]), [point("down", 10, 20), point("up", 10, 20)]);
    expect([...bare.selection]).toEqual([]);
  });

  it("selects a wire", () => {
    expect([...run(selectTool, sheetOf(two), [point("down", 12, 0.3), point("up", 12, 0.3)]).selection]).toEqual([
      "w1",
    ]);
  });

  it("adds to what is selected, or takes from it, when adding", () => {
    const tap = (x: number) => [point("down", x, 0, { isAdding: true }), point("up", x, 0, { isAdding: true })];
    expect([...run(selectTool, sheetOf(two, ["e1"]), tap(22)).selection]).toEqual(["e1", "e2"]);
    expect([...run(selectTool, sheetOf(two, ["e1", "e2"]), tap(22)).selection]).toEqual(["e1"]);
  });

  it("flicks a control", () => {
    const { acts } = run(selectTool, sheetOf(sheet([control(false)])), [point("down", 2, 10), point("up", 2, 10)]);
    expect(acts).toContainEqual({ act: "flick", controlId: "s1" });
    expect(acts.some(({ act }) => act === "release")).toBe(false);
  });

  it("holds a control that springs back until it is let go", () => {
    const { steps } = run(selectTool, sheetOf(sheet([control(true)])), [point("down", 2, 10), point("up", 2, 10)]);
    expect(steps[0]!.acts).toEqual([{ act: "flick", controlId: "s1" }]);
    expect(steps[1]!.acts).toContainEqual({ act: "release", controlId: "s1" });
  });
});

describe("a drag of a part", () => {
  const drag = [point("down", 2, 0), point("move", 4, 1), point("move", 5.2, 3.4), point("up", 5.2, 3.4)];

  it("moves it by whole steps, as one step to undo", () => {
    const { transactions, document } = run(selectTool, sheetOf(two), drag);
    expect(transactions).toHaveLength(1);
    expect(document.parts[0]!.at).toEqual([3, 3]);
    expect(document.parts[1]!.at).toEqual([20, 0]);
  });

  it("takes a selected note along, and a note taken hold of moves alone", () => {
    const document = { ...two, notes: [{ id: "n1", at: [0, 6], text: "Behind the panel" }] as const };
    const along = run(selectTool, sheetOf(document, ["e1", "n1"]), drag);
    expect(along.transactions).toHaveLength(1);
    expect([along.document.parts[0]!.at, along.document.notes![0]!.at]).toEqual([
      [3, 3],
      [3, 9],
    ]);
    const onNote = [point("down", 1, 6), point("move", 3, 6), point("up", 6, 6)];
    const alone = run(selectTool, sheetOf(document), onNote);
    expect([...alone.selection]).toEqual(["n1"]);
    expect([alone.document.parts[0]!.at, alone.document.notes![0]!.at]).toEqual([
      [0, 0],
      [5, 6],
    ]);
  });

  it("changes nothing until it is let go, and shows its wire following", () => {
    const { steps } = run(selectTool, sheetOf(two), drag);
    const { lift } = steps[2]!.overlay;
    expect(steps[2]!.acts).toEqual([]);
    expect([lift?.dx, lift?.dy]).toEqual([3, 3]);
    expect(lift?.stretched[0]?.route[0]).toEqual([7, 3]);
  });

  it("moves all that is selected, with the corners of wires between", () => {
    const document = sheet(two.parts, [wire("w1", "e1.-", "e2.+", { via: [[10, 5]] })]);
    const after = run(selectTool, sheetOf(document, ["e1", "e2"]), drag).document;
    expect(after.parts.map(({ at }) => at)).toEqual([
      [3, 3],
      [23, 3],
    ]);
    expect(after.wires[0]!.via).toEqual([[13, 8]]);
  });

  it("takes along the corner on the run that leaves it, so that the run stays straight", () => {
    const document = sheet(two.parts, [
      wire("w1", "e1.-", "e2.+", {
        via: [
          [9, 0],
          [9, 6],
        ],
      }),
    ]);
    expect(run(selectTool, sheetOf(document), drag).document.wires[0]!.via).toEqual([
      [9, 3],
      [9, 6],
    ]);
  });

  it("comes to nothing when it ends where it began, or is cancelled", () => {
    const back = [...drag.slice(0, 3), point("move", 2, 0), point("up", 2, 0)];
    expect(run(selectTool, sheetOf(two), back).transactions).toEqual([]);
    expect(run(selectTool, sheetOf(two), [...drag.slice(0, 3), { type: "cancel" }]).transactions).toEqual([]);
    expect(
      run(selectTool, sheetOf(two), [...drag.slice(0, 3), { type: "key", key: "Escape" }]).last.overlay.lift,
    ).toBeNull();
  });

  it("lets go of a momentary control without leaving it on", () => {
    const { acts } = run(selectTool, sheetOf(sheet([control(true)])), [
      point("down", 2, 10),
      point("move", 6, 14),
      point("up", 6, 14),
    ]);
    expect(acts.map(({ act }) => act)).toEqual(["flick", "release", "select", "dispatch"]);
  });

  it("puts a part with two ends into the wire it is dropped on", () => {
    const document = sheet([...two.parts, { id: "f1", kind: "fuse", at: [10, 9] }], two.wires);
    const events = [point("down", 12, 9), point("move", 12, 4), point("move", 12, 0.3), point("up", 12, 0.3)];
    const after = run(selectTool, sheetOf(document), events).document;
    expect(after.wires.map(({ from, to }) => `${from} ${to}`)).toEqual(["e1.- f1.1", "f1.2 e2.+"]);
  });
});

describe("a drag over the bare sheet", () => {
  it("selects what lies wholly inside the marquee", () => {
    const events = [point("down", -2, -4), point("move", 10, 5), point("up", 10, 5)];
    expect([...run(selectTool, sheetOf(two), events).selection]).toEqual(["e1"]);
  });

  it("moves the view with one finger", () => {
    const finger = { isTouch: true };
    const { acts } = run(selectTool, sheetOf(two), [point("down", 10, 20, finger), point("move", 13, 22, finger)]);
    expect(acts).toEqual([{ act: "view", view: { x: 30, y: 20, scale: 10 } }]);
  });
});

describe("a drag of a wire", () => {
  it("from a terminal to another draws one", () => {
    const apart = sheet(two.parts);
    const events = [point("down", 4, 0), point("move", 12, 0), point("up", 19.5, 0.4)];
    const { document, selection } = run(selectTool, sheetOf(apart), events);
    expect(document.wires).toEqual([{ id: "w1", from: "e1.-", to: "e2.+" }]);
    expect([...selection]).toEqual(["w1"]);
  });

  it("moves the run it takes hold of", () => {
    const bent = sheet([lamp("e1", 0, 0), lamp("e2", 20, 10)], [wire("w1", "e1.-", "e2.+")]);
    const before = sheetOf(bent, ["w1"]);
    const x = before.scene.wires.get("w1")!.picture.route[1]![0];
    const events = [point("down", x, 5), point("move", x + 2, 5), point("up", x + 3, 5)];
    expect(run(selectTool, before, events).document.wires[0]!.via).toEqual([
      [x + 3, 0],
      [x + 3, 10],
    ]);
  });

  it("takes its end to another terminal, keeping all else about it", () => {
    const three = sheet([...two.parts, lamp("e3", 20, 8)], [wire("w1", "e1.-", "e2.+", { metres: 2, via: [[10, 3]] })]);
    const events = [point("down", 19, 0), point("move", 20, 5), point("up", 20.3, 7.6)];
    expect(run(selectTool, sheetOf(three, ["w1"]), events).document.wires).toEqual([
      { id: "w1", from: "e1.-", to: "e3.+", metres: 2 },
    ]);
  });

  it("leaves its terminal free for the next wire", () => {
    const three = sheet([...two.parts, lamp("e3", 20, 8)], [wire("w1", "e1.-", "e2.+")]);
    const events = [point("down", 20, 0), point("move", 20, 5), point("up", 20.3, 7.6)];
    const { wires } = run(selectTool, sheetOf(three, ["w1"]), events).document;
    expect(wires.map(({ from, to }) => [from, to])).toEqual([
      ["e1.-", "e2.+"],
      ["e2.+", "e3.+"],
    ]);
  });
});

describe("a menu", () => {
  it("opens where a finger is held, selects what it is about, and spends the press", () => {
    const finger = { isTouch: true };
    const { acts, selection, transactions } = run(selectTool, sheetOf(two), [
      point("down", 2, 0, finger),
      point("hold", 2, 0, finger),
      point("move", 9, 9, finger),
      point("up", 9, 9, finger),
    ]);
    expect(acts.at(-1)).toEqual({ act: "menu", at: { x: 20, y: 0 }, target: { type: "part", id: "e1", at: [2, 0] } });
    expect([...selection]).toEqual(["e1"]);
    expect(transactions).toEqual([]);
  });

  it("stays shut while a finger holds down a control that springs back", () => {
    const finger = { isTouch: true };
    const events = [point("down", 2, 10, finger), point("hold", 2, 10, finger)];
    expect(run(selectTool, sheetOf(sheet([control(true)])), events).acts).toEqual([{ act: "flick", controlId: "s1" }]);
  });

  it("keeps a selection that its target is part of", () => {
    const { selection } = run(selectTool, sheetOf(two, ["e1", "e2"]), [point("menu", 2, 0)]);
    expect([...selection]).toEqual(["e1", "e2"]);
  });
});
