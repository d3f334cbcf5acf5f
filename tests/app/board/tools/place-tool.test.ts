import { describe, expect, it } from "vitest";
import { placeTool } from "../../../../app/board/tools/place-tool.ts";
import { lamp, point, sheet, sheetOf, wire } from "../support/sheets.ts";
import { run } from "../support/run-tool.ts";

const holding = (kind: string, document = sheet([])) => ({
  ...sheetOf(document),
  placing: { part: { kind }, dragged: true },
});

describe("putting down a part", () => {
  it("stands its middle at the pointer on whole steps, with the next id, selected", () => {
    const { document, selection, acts } = run(placeTool, holding("lamp", sheet([lamp("e4", 40, 0)])), [
      point("move", 5, 5),
      point("up", 10.2, 6.9),
    ]);
    expect(document.parts.at(-1)).toEqual({ id: "e5", kind: "lamp", at: [8, 7] });
    expect([...selection]).toEqual(["e5"]);
    expect(acts).toContainEqual({ act: "tool", tool: "select" });
  });

  it("shows it meanwhile, and nothing once the pointer has left", () => {
    const { steps } = run(placeTool, holding("lamp"), [point("move", 5, 5), point("leave", 0, 0)]);
    expect(steps[0]!.overlay.ghost?.terminals[0]?.at).toEqual([3, 5]);
    expect(steps[1]!.overlay.ghost).toBeNull();
  });

  it("turns and flips it in hand", () => {
    const keys = [{ type: "key", key: "r" } as const, { type: "key", key: "f" } as const];
    const { document } = run(placeTool, holding("lamp"), [point("move", 5, 5), ...keys, point("up", 5, 5)]);
    expect(document.parts[0]).toMatchObject({ turn: 90, flip: true });
  });

  it("keeps another in hand while adding", () => {
    const again = { isAdding: true };
    const { document, acts } = run(placeTool, holding("lamp"), [point("up", 5, 5, again), point("up", 20, 5, again)]);
    expect(document.parts.map(({ id }) => id)).toEqual(["e1", "e2"]);
    expect(acts.every(({ act }) => act === "dispatch")).toBe(true);
  });

  it("is given up by key and by the second button", () => {
    for (const event of [{ type: "key", key: "Escape" } as const, point("menu", 5, 5)]) {
      const { acts, document } = run(placeTool, holding("lamp"), [point("move", 5, 5), event]);
      expect(acts).toContainEqual({ act: "placing", placing: null });
      expect(document.parts).toEqual([]);
    }
  });

  it("goes into the wire it is let go over, turned to lie along it, its first end towards the beginning", () => {
    const upright = sheet(
      [lamp("e1", 0, 0, { turn: 90 }), lamp("e2", 0, 20, { turn: 90 })],
      [wire("w1", "e1.-", "e2.+", { metres: 3 })],
    );
    const { document, transactions } = run(placeTool, holding("fuse", upright), [
      point("move", 0.4, 12),
      point("up", 0.4, 12),
    ]);
    expect(transactions).toHaveLength(1);
    expect(document.parts.at(-1)).toEqual({ id: "f1", kind: "fuse", at: [0, 10], turn: 90 });
    expect(document.wires.map(({ from, to, metres }) => [from, to, metres])).toEqual([
      ["e1.-", "f1.1", 1.5],
      ["f1.2", "e2.+", 1.5],
    ]);
  });
});
