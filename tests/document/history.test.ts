import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { record, redo, startHistory, undo, type Document, type Edit, type History } from "../../core/document/index.ts";

const drawing: Document = {
  format: "groundstrap",
  version: 1,
  parts: [
    { id: "bat", kind: "battery", at: [0, 0] },
    { id: "f1", kind: "fuse", at: [4, 0], props: { ratingA: 10 } },
  ],
  wires: [{ id: "w1", from: "bat.+", to: "f1.1" }],
};

const move = (id: string, x: number, y: number): Edit => ({ op: "set-part", id, change: { at: [x, y] } });

describe("history of a drawing", () => {
  test("starts with nothing to undo or redo", () => {
    expect(undo(startHistory(drawing))).toBeNull();
    expect(redo(startHistory(drawing))).toBeNull();
  });

  test("undo gives back the very document that was there, redo the one after", () => {
    const done = record(startHistory(drawing), { label: "Delete F1", edits: [{ op: "remove-part", id: "f1" }] }, 0);
    const back = undo(done)!;
    expect(back.present).toBe(drawing);
    expect(redo(back)!.present).toBe(done.present);
  });

  test("a step keeps its label on both sides", () => {
    const done = record(startHistory(drawing), { label: "Delete F1", edits: [{ op: "remove-part", id: "f1" }] }, 0);
    expect(done.past.at(-1)!.label).toBe("Delete F1");
    expect(undo(done)!.future.at(-1)!.label).toBe("Delete F1");
  });

  test("moves of the same part soon after one another are one step", () => {
    let history = record(startHistory(drawing), { label: "Move F1", edits: [move("f1", 5, 0)] }, 0);
    history = record(history, { label: "Move F1", edits: [move("f1", 6, 0)] }, 699);
    history = record(history, { label: "Move F1", edits: [move("f1", 7, 0)] }, 1398);
    expect(history.past).toHaveLength(1);
    expect(undo(history)!.present).toBe(drawing);
  });

  test("a pause, another part, or another kind of change starts a new step", () => {
    const first = record(startHistory(drawing), { label: "Move F1", edits: [move("f1", 5, 0)] }, 0);
    const later = record(first, { label: "Move F1", edits: [move("f1", 6, 0)] }, 700);
    const other = record(first, { label: "Move battery", edits: [move("bat", 1, 0)] }, 10);
    const turned = record(first, { label: "Turn F1", edits: [{ op: "set-part", id: "f1", change: { turn: 90 } }] }, 10);
    for (const history of [later, other, turned]) expect(history.past).toHaveLength(2);
  });

  test("a move right after an undo or a redo is a step of its own", () => {
    const first = record(startHistory(drawing), { label: "Move F1", edits: [move("f1", 5, 0)] }, 0);
    const again = record(redo(undo(first)!)!, { label: "Move F1", edits: [move("f1", 6, 0)] }, 10);
    expect(again.past).toHaveLength(2);
  });

  test("a new step forgets what was undone", () => {
    const first = record(startHistory(drawing), { label: "Move F1", edits: [move("f1", 5, 0)] }, 0);
    const branched = record(undo(first)!, { label: "Move battery", edits: [move("bat", 1, 0)] }, 10);
    expect(redo(branched)).toBeNull();
  });

  test("an empty transaction is no step", () => {
    const history = startHistory(drawing);
    expect(record(history, { label: "Nothing", edits: [] }, 0)).toBe(history);
  });

  test("law: undoing every step gives the first document, redoing them the last", () => {
    const edit: fc.Arbitrary<Edit> = fc.oneof(
      fc
        .record({ id: fc.constantFrom("bat", "f1"), x: fc.integer(), y: fc.integer() })
        .map(({ id, x, y }) => move(id, x, y)),
      fc.integer({ min: 1, max: 40 }).map((ratingA): Edit => ({ op: "set-props", id: "f1", change: { ratingA } })),
      fc.string().map((title): Edit => ({ op: "set-sheet", change: { title } })),
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(edit, fc.integer({ min: 0, max: 2000 }))), (steps) => {
        let history: History = startHistory(drawing);
        let atMs = 0;
        for (const [one, pauseMs] of steps)
          history = record(history, { label: "Step", edits: [one] }, (atMs += pauseMs));
        const last = history.present;
        for (let back = undo(history); back !== null; back = undo(back)) history = back;
        expect(history.present).toEqual(drawing);
        for (let next = redo(history); next !== null; next = redo(next)) history = next;
        expect(history.present).toBe(last);
      }),
    );
  });
});
