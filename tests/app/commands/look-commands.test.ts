import { expect, test } from "vitest";
import { findCommand } from "../../../app/commands/index.ts";
import { whyNot } from "../../../app/commands/command.ts";
import { testEditor } from "../drawing.ts";

test.each([
  ["zoom-in", /as close as it goes/],
  ["zoom-out", /as far as it goes/],
])("%s ends with a reason, and what is in the Board's middle stays there", (id, reason) => {
  const { editor } = testEditor();
  editor.set({ boardSize: { width: 800, height: 600 }, view: { x: 100, y: 50, scale: 12 } });
  const middle = () => {
    const { x, y, scale } = editor.state.view;
    return [(400 - x) / scale, (300 - y) / scale];
  };
  const before = middle();
  const command = findCommand(editor.state, id)!;
  let presses = 0;
  for (; whyNot(command, editor.state) === null; presses += 1) {
    expect(presses).toBeLessThan(50);
    const plan = command.plan(editor.state);
    if ("reason" in plan) throw new Error(plan.reason);
    for (const one of plan.effects ?? []) if (one.do === "view") editor.set({ view: one.view });
  }
  expect(presses).toBeGreaterThan(3);
  expect(whyNot(command, editor.state)).toMatch(reason);
  expect(middle()[0]).toBeCloseTo(before[0]!, 6);
  expect(middle()[1]).toBeCloseTo(before[1]!, 6);
});
