import { describe, expect, it } from "vitest";
import { begin, changed, redone, undone } from "../../../app/bench/history.ts";
import { letterOf } from "../../../app/bench/own-kind.ts";
import { OwnSymbols } from "../../../app/bench/own-symbols.ts";
import { changeSymbol, freshOwnPart, placeSymbol } from "../../../app/bench/plans.ts";
import {
  answersTo,
  BLANK_SYMBOL,
  partOf,
  symbolOf,
  symbolOnBoard,
  type BenchSymbol,
} from "../../../app/bench/symbol.ts";
import { symbolsInText, symbolText, whyNoFile } from "../../../app/bench/symbol-file.ts";
import { withTerminalNamed } from "../../../app/bench/behaviour.ts";
import { memoryKeyValue } from "../../../app/keeping/key-value.ts";
import { documentOf } from "../../../app/store/editor-state.ts";
import { analyse } from "../../../core/analyse.ts";
import type { Document } from "../../../core/document/index.ts";
import { lampCircuit, testEditor } from "../drawing.ts";
import { buzzer } from "./buzzer.ts";

function ownSymbols(kept = memoryKeyValue()) {
  let number = 0;
  return new OwnSymbols({ kept, newId: () => `s${(number += 1)}` });
}

describe("a symbol of one's own", () => {
  it("comes back whole from the part that carries it and from its own file", () => {
    expect(symbolOf(partOf(buzzer, "y1"))).toEqual(buzzer);
    expect(symbolsInText(symbolText(buzzer))).toEqual([buzzer]);
  });

  it("is found by its name and its search words", () => {
    expect(["", "buz", "BEEPER horn"].every((typed) => answersTo(buzzer, typed))).toBe(true);
    expect(answersTo(buzzer, "pump")).toBe(false);
  });

  it("is refused with the reason where no file could hold it", () => {
    expect(whyNoFile({ ...buzzer, elements: [{ type: "load", a: "1", b: "9" }] })).toMatch(/elements\[0\]\.b.*"9"/);
  });
});

describe("my symbols", () => {
  it("are there after the page is opened anew, by name", async () => {
    const kept = memoryKeyValue();
    await ownSymbols(kept).keep(buzzer, "b");
    await ownSymbols(kept).keep({ ...buzzer, name: "Alarm" }, "a");
    const anew = ownSymbols(kept);
    await anew.look();
    expect(anew.store.getState().kept).toEqual([
      { id: "a", symbol: { ...buzzer, name: "Alarm" } },
      { id: "b", symbol: buzzer },
    ]);
  });

  it("are kept over themselves and taken off by their id", async () => {
    const symbols = ownSymbols();
    const first = await symbols.keep(buzzer);
    if ("error" in first) throw new Error(first.error);
    await symbols.keep({ ...buzzer, name: "Horn" }, first.id);
    expect(symbols.store.getState().kept.map(({ symbol }) => symbol.name)).toEqual(["Horn"]);
    await symbols.remove(first.id);
    expect(symbols.store.getState().kept).toEqual([]);
  });

  it("leave alone what is kept beside them and what can't be read", async () => {
    const kept = memoryKeyValue();
    await kept.update("drawing d1", () => ({ text: symbolText(buzzer) }));
    await kept.update("symbol bad", () => "{");
    await kept.update("symbol worse", () => 7);
    const symbols = ownSymbols(kept);
    await symbols.look();
    expect(symbols.store.getState().kept).toEqual([]);
    expect(await kept.read("symbol bad")).toBe("{");
  });

  it("say so when the browser keeps nothing", async () => {
    const refusing = { ...memoryKeyValue(), update: () => Promise.reject(new Error("full")) };
    expect(await ownSymbols(refusing).keep(buzzer)).toEqual({
      error: "The browser does not keep it: save it as a file instead.",
    });
  });

  it("keep unfinished work by subject, and begin anew where nothing was changed", () => {
    const symbols = ownSymbols();
    const subject = { from: "new" } as const;
    const work = changed(begin(BLANK_SYMBOL), buzzer);
    symbols.leave(subject, work);
    expect(symbols.workOn(subject, BLANK_SYMBOL)).toBe(work);
    symbols.leave(subject, begin(buzzer));
    expect(symbols.workOn(subject, BLANK_SYMBOL).present).toBe(BLANK_SYMBOL);
  });
});

describe("undo on the Bench", () => {
  it("goes back and forth, and forgets what was undone after another change", () => {
    const named = { ...buzzer, name: "Horn" };
    const history = changed(changed(begin(BLANK_SYMBOL), buzzer), named);
    expect(undone(history).present).toBe(buzzer);
    expect(redone(undone(history))).toEqual(history);
    expect(changed(undone(history), BLANK_SYMBOL).future).toEqual([]);
    expect(undone(begin(buzzer)).present).toBe(buzzer);
    expect(changed(history, named)).toBe(history);
  });
});

describe("a symbol put on the drawing", () => {
  it("stands under the next id with its own letter", () => {
    expect(freshOwnPart(lampCircuit, buzzer)).toMatchObject({ id: "y1", label: "Buzzer" });
    expect(letterOf({ kind: "custom", props: { letter: "constructor" } })).toBe("n");
    const { editor } = testEditor();
    const plan = placeSymbol(editor.state, buzzer);
    if ("reason" in plan) throw new Error(plan.reason);
    editor.dispatch(plan.transaction!);
    expect(documentOf(editor.state).parts.at(-1)).toMatchObject({ id: "y1", kind: "custom", label: "Buzzer" });
  });

  it("is changed in one step; wires follow a renamed terminal and go with one that is gone", () => {
    const { editor } = testEditor(wired);
    const before = documentOf(editor.state);
    const onBench = symbolOnBoard(before.parts.find(({ id }) => id === "y1")!);
    const renamed = withTerminalNamed(onBench, 0, "+");
    change(editor, renamed);
    expect(documentOf(editor.state).wires.map(({ from, to }) => `${from} ${to}`)).toEqual(["b1.+ y1.+", "y1.2 b1.-"]);
    expect(documentOf(editor.state).parts[1]).toMatchObject({ covers: { "+": "bare" } });
    editor.undo();
    expect(documentOf(editor.state)).toBe(before);
    change(editor, { ...onBench, terminals: [onBench.terminals[0]!], elements: [] });
    expect(documentOf(editor.state).wires.map(({ id }) => id)).toEqual(["w1"]);
  });

  it("is analysed like any other part", () => {
    const { report } = analyse(wired);
    // 6 W at 12 V is 24 ohm, behind 6 milliohm of battery, 53.5 of fuse and two unknown wires of 0.1.
    expect(report.situations["rest"]?.parts["y1"]?.amps).toBeCloseTo(12.6 / (24 + 0.006 + 0.0535 + 0.0002), 6);
  });
});

const wired: Document = {
  format: "groundstrap",
  version: 1,
  parts: [
    { id: "b1", kind: "battery", at: [0, 0] },
    { ...partOf(buzzer, "y1"), at: [10, 0], covers: { "1": "bare" } },
  ],
  wires: [
    { id: "w1", from: "b1.+", to: "y1.1" },
    { id: "w2", from: "y1.2", to: "b1.-" },
  ],
};

function change(editor: ReturnType<typeof testEditor>["editor"], symbol: BenchSymbol): void {
  const plan = changeSymbol(editor.state, "y1", symbol);
  if ("reason" in plan) throw new Error(plan.reason);
  editor.dispatch(plan.transaction!);
}
