import { describe, expect, test } from "vitest";
import { analyse } from "../../../core/analyse.ts";
import { documentOf } from "../../../app/store/editor-state.ts";
import { boardLink } from "../../../app/store/board-link.ts";
import type { Editor } from "../../../app/store/editor.ts";
import { marksOf } from "../../../app/worker/marks-of.ts";
import type { Present, Told } from "../../../app/worker/protocol.ts";
import { lampCircuit, testEditor } from "../drawing.ts";

const move = { label: "Move F1", edits: [{ op: "set-part", id: "f1", change: { at: [11, 0] } }] } as const;
const rate = { label: "Rate F1", edits: [{ op: "set-props", id: "f1", change: { ratingA: 5 } }] } as const;

/** The answer to the last question, as the worker would give it. */
function answerTo(editor: Editor, revision: number): Told {
  const { study, report } = analyse(documentOf(editor.state));
  const rest = report.situations["rest"]!;
  const present: Present = { ...rest, positions: {} };
  return { type: "analysed", revision, report, present, marks: marksOf(revision, study.netlist, report, present) };
}

describe("editing a drawing", () => {
  test("an edit is analysed under a new revision", () => {
    const { editor, asked } = testEditor();
    const before = editor.state.revision;
    editor.dispatch(rate);
    expect(editor.state.revision).toBe(before + 1);
    expect(asked.at(-1)).toMatchObject({ type: "analyse", revision: before + 1 });
  });

  test("moving a part solves nothing and keeps the marks, under the new revision", () => {
    const { editor, asked } = testEditor();
    editor.hear(answerTo(editor, editor.state.revision));
    const questions = asked.length;
    editor.dispatch(move);
    expect(asked).toHaveLength(questions);
    expect(editor.state.marks!.revision).toBe(editor.state.revision);
    expect(editor.state.reportRevision).toBe(editor.state.revision);
  });

  test("an answer about an older drawing is dropped", () => {
    const { editor } = testEditor();
    const old = answerTo(editor, editor.state.revision);
    editor.dispatch(rate);
    editor.hear(old);
    expect(editor.state.report).toBeNull();
    expect(editor.state.marks).toBeNull();
  });

  test("an answer that arrives after a mere move still counts", () => {
    const { editor } = testEditor();
    const answer = answerTo(editor, editor.state.revision);
    editor.dispatch(move);
    editor.hear(answer);
    expect(editor.state.reportRevision).toBe(editor.state.revision);
    expect(editor.state.marks!.revision).toBe(editor.state.revision);
  });

  test("undo restores the very document and says what it took back", () => {
    const { editor } = testEditor();
    const before = documentOf(editor.state);
    editor.dispatch(rate);
    editor.undo();
    expect(documentOf(editor.state)).toBe(before);
    expect(editor.state.said.text).toBe("Undone: Rate F1");
  });

  test("pan, selection and controls are no steps to undo", () => {
    const { editor } = testEditor();
    editor.set({ view: { x: 1, y: 2, scale: 3 } });
    editor.select(["f1"]);
    editor.operate("s1", "on");
    expect(editor.state.history.past).toEqual([]);
  });

  test("what is deleted is no longer selected", () => {
    const { editor } = testEditor();
    editor.select(["f1", "la1"]);
    editor.dispatch({ label: "Delete F1", edits: [{ op: "remove-part", id: "f1" }] });
    expect([...editor.state.selection]).toEqual(["la1"]);
  });

  test("deleting a control takes it out of the saved situations, in the same step", () => {
    const { editor } = testEditor();
    editor.dispatch({ label: "Delete S1", edits: [{ op: "remove-part", id: "s1" }] });
    expect(documentOf(editor.state).situations).toEqual([{ id: "on", name: "Lamp on", set: {} }]);
    editor.undo();
    expect(documentOf(editor.state)).toBe(lampCircuit);
  });

  test("a drawing that is edited in another tab refuses edits here", () => {
    const { editor } = testEditor();
    editor.set({ access: "looking" });
    editor.dispatch(rate);
    expect(documentOf(editor.state)).toBe(lampCircuit);
    expect(editor.state.said.text).toContain("another tab");
  });
});

describe("operating controls", () => {
  test("flicking one asks for the present situation only", () => {
    const { editor, asked } = testEditor();
    editor.flick("s1");
    expect(asked.at(-1)).toEqual({ type: "present", revision: editor.state.revision, positions: { s1: "on" } });
    editor.flick("s1");
    expect(editor.state.positions["s1"]).toBe("off");
  });

  test("a momentary one springs back when let go, another stays", () => {
    const { editor } = testEditor();
    editor.flick("s1");
    editor.release("s1");
    expect(editor.state.positions["s1"]).toBe("on");
    editor.dispatch({ label: "Momentary", edits: [{ op: "set-props", id: "s1", change: { momentary: true } }] });
    editor.release("s1");
    expect(editor.state.positions["s1"]).toBe("off");
  });

  test("a winch switch that springs back from both its positions is held at them in turn", () => {
    const props = { momentary: true };
    const { editor } = testEditor({
      ...lampCircuit,
      parts: [{ id: "s1", kind: "changeover-switch", props }],
      wires: [],
      situations: [],
    });
    const held = [1, 2, 3].map(() => {
      editor.flick("s1");
      const now = editor.state.positions["s1"];
      editor.release("s1");
      return now;
    });
    expect(held).toEqual(["1", "2", "1"]);
    expect(editor.state.positions["s1"]).toBe("off");
  });
});

describe("analysis in trouble", () => {
  test("a failure shows no marks, says so, and the next edit clears it", () => {
    const { editor } = testEditor();
    editor.hear({ type: "failed", revision: editor.state.revision, reason: "no such thing" });
    expect(editor.state.marks).toBeNull();
    expect(editor.state.notices.map((notice) => notice.about)).toEqual(["analysis"]);
    editor.dispatch(rate);
    editor.hear(answerTo(editor, editor.state.revision));
    expect(editor.state.notices).toEqual([]);
  });
});

describe("what the Board sees", () => {
  test("the same snapshot until something it shows has changed", () => {
    const { editor } = testEditor();
    const board = boardLink(editor);
    let calls = 0;
    board.subscribe(() => (calls += 1));
    const before = board.getSnapshot();
    editor.say("Hello");
    expect(board.getSnapshot()).toBe(before);
    expect(calls).toBe(0);
    editor.select(["f1"]);
    expect(calls).toBe(1);
    expect(board.getSnapshot().document).toBe(before.document);
  });
});

describe("a Board that changes its size", () => {
  test("keeps what is in its middle there", () => {
    const { editor } = testEditor();
    editor.resizeBoard(400, 300);
    editor.set({ view: { x: 10, y: 20, scale: 12 } });
    editor.resizeBoard(400, 100);
    expect(editor.state.view).toEqual({ x: 10, y: -80, scale: 12 });
  });
});
