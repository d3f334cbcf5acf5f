import { expect, test } from "vitest";
import { nextHint } from "../../../app/store/hints.ts";
import type { Editor } from "../../../app/store/editor.ts";
import { readPreferences } from "../../../app/store/preferences.ts";
import { testEditor } from "../drawing.ts";

function close(editor: Editor): void {
  editor.setPreferences({ seen: [...editor.state.preferences.seen, nextHint(editor.state)!.id] });
}

test("hints come one at a time, know when they were done, and end", () => {
  const { editor } = testEditor();
  expect(nextHint(editor.state)!.id).toBe("words");
  close(editor);
  const flick = nextHint(editor.state)!;
  expect([flick.id, flick.isDone(editor.state)]).toEqual(["flick", false]);
  editor.flick("s1");
  expect(flick.isDone(editor.state)).toBe(true);
  close(editor);
  // Without a report there is no snag to choose.
  expect(nextHint(editor.state)!.id).toBe("draw");
  close(editor);
  expect(nextHint(editor.state)).toBeNull();
});

test("what was closed stays closed the next time, whatever else was kept", () => {
  const kept = (seen: unknown) => readPreferences({ getItem: () => JSON.stringify({ seen }), setItem: () => {} }).seen;
  expect(kept(["words", 7, "flick"])).toEqual(["words", "flick"]);
  expect(kept("words")).toEqual([]);
});
