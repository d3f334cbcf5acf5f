import { describe, expect, test } from "vitest";
import type { Document } from "../../core/document/index.ts";
import { changeLog } from "../../core/papers/change-log.ts";
import { changeRows } from "../../core/papers/lists/index.ts";
import { awningLamps } from "./support/awning-lamps.ts";
import { said } from "./support/said.ts";
import { sourceOf } from "./support/source.ts";

const next: Document = {
  ...awningLamps,
  sheet: { ...awningLamps.sheet, revision: "C" },
  parts: awningLamps.parts.map((part) =>
    part.id === "f1" ? { ...part, at: [9, 9] as const, props: { ratingA: 10, body: "blade" } } : part,
  ),
  wires: [
    ...awningLamps.wires
      .filter(({ id }) => id !== "w11")
      .map((wire) => (wire.id === "w2" ? { ...wire, metres: 5, via: [[1, 1] as const] } : wire)),
    { id: "w12", from: "bat.-", to: "gs.4", size: "4 AWG", metres: 2 },
  ],
};

describe("differences", () => {
  test("name what was added, removed and changed, from what to what", () => {
    expect(changeRows(awningLamps, next)).toEqual([
      { what: "changed", id: "f1", how: "ratingA: 15 to 10" },
      { what: "removed", id: "w11", how: "bat.- to g1.g, 4 AWG, 0.6 m" },
      { what: "added", id: "w12", how: "bat.- to gs.4, 4 AWG, 2 m" },
      { what: "changed", id: "w2", how: "metres: 4.5 to 5" },
    ]);
  });

  test("a part or wire moved on the sheet changed nothing on the vehicle", () => {
    const moved = {
      ...awningLamps,
      parts: awningLamps.parts.map((part) => ({ ...part, at: [1, 1] as const, turn: 90 as const })),
    };
    expect(changeRows(awningLamps, moved)).toEqual([]);
  });

  test("something stated for the first time, or no longer, reads so", () => {
    const stated = {
      ...awningLamps,
      wires: awningLamps.wires.map((wire) => (wire.id === "w9" ? { ...wire, metres: 3 } : wire)),
    };
    expect(changeRows(awningLamps, stated)).toEqual([{ what: "changed", id: "w9", how: "metres: not stated to 3" }]);
    expect(changeRows(stated, awningLamps)).toEqual([{ what: "changed", id: "w9", how: "metres: 3 to not stated" }]);
  });
});

test("the log names both revisions and leaves lines for the pen", () => {
  const text = said(changeLog, { ...sourceOf(next), previous: awningLamps });
  expect(text).toContain("From revision B to C");
  expect(text).toMatch(/changed\nf1\nratingA: 15 to 10/);
  expect(text).toContain("Changes made with a pen");
});

test("without an earlier revision it says that there was none to compare with", () => {
  expect(said(changeLog, sourceOf(awningLamps))).toContain(
    "Revision B. No earlier revision was given to compare with.",
  );
});
