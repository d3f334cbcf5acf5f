import { describe, expect, test } from "vitest";
import { findCommand } from "../../../app/commands/index.ts";
import { copyText, pastePlan } from "../../../app/commands/clipboard.ts";
import { documentOf } from "../../../app/store/editor-state.ts";
import type { Editor } from "../../../app/store/editor.ts";
import { readCircuitFile, writeCircuitFile } from "../../../core/file/index.ts";
import { lampCircuit, testEditor } from "../drawing.ts";

function run(editor: Editor, id: string): void {
  const plan = findCommand(editor.state, id)!.plan(editor.state);
  if ("reason" in plan) throw new Error(plan.reason);
  if (plan.transaction) editor.dispatch(plan.transaction);
  if (plan.select) editor.select(plan.select);
}
const notesOf = (editor: Editor) => documentOf(editor.state).notes ?? [];

describe("a note on the drawing", () => {
  test("is written where the menu was opened, selected, and undone in one step", () => {
    const { editor, asked } = testEditor();
    const questions = asked.length;
    editor.set({ menu: { at: { x: 0, y: 0 }, target: { type: "sheet", id: "", at: [7.4, 2.6] } } });
    run(editor, "note");
    expect(notesOf(editor)).toEqual([{ id: "n1", at: [7, 3], text: "Note" }]);
    expect([...editor.state.selection]).toEqual(["n1"]);
    expect(asked).toHaveLength(questions);
    editor.undo();
    expect(documentOf(editor.state)).toEqual(lampCircuit);
  });

  test("is moved by the arrows together with the parts selected, and taken off by Delete", () => {
    const { editor } = testEditor({ ...lampCircuit, notes: [{ id: "n1", at: [7, 3], text: "Behind the panel" }] });
    editor.select(["n1", "f1"]);
    run(editor, "nudge-right");
    expect(notesOf(editor)[0]!.at).toEqual([8, 3]);
    expect(documentOf(editor.state).parts[1]!.at).toEqual([11, 0]);
    editor.select(["n1"]);
    run(editor, "delete");
    expect(notesOf(editor)).toEqual([]);
    expect(documentOf(editor.state).parts).toHaveLength(4);
  });

  test("is copied under an id of its own", () => {
    const document = { ...lampCircuit, notes: [{ id: "n1", at: [7, 3], text: "Behind the panel" }] as const };
    const { editor } = testEditor(document);
    const plan = pastePlan(editor.state, copyText(document, new Set(["n1"])));
    if ("reason" in plan) throw new Error(plan.reason);
    editor.dispatch(plan.transaction!);
    expect(notesOf(editor).map(({ id, at }) => [id, at])).toEqual([
      ["n1", [7, 3]],
      ["n2", [9, 5]],
    ]);
  });

  test("goes through a file and back; one without words or with a part's id is refused", () => {
    const write = (note: object) =>
      readCircuitFile(JSON.stringify({ ...lampCircuit, notes: [{ id: "n1", at: [0, 0], text: "x", ...note }] }));
    const document = { ...lampCircuit, notes: [{ id: "n1", at: [7, 3], text: "Two\nlines" }] as const };
    expect(readCircuitFile(writeCircuitFile(document))).toEqual({ ok: true, document });
    expect(write({})).toMatchObject({ ok: true });
    expect(write({ text: "" })).toMatchObject({ ok: false, error: expect.stringContaining("notes[0].text") });
    expect(write({ text: "x".repeat(1001) })).toMatchObject({ ok: false });
    expect(write({ id: "f1" })).toMatchObject({ ok: false, error: expect.stringContaining("notes[0].id") });
  });
});
