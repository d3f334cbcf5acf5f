import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { navigate, type NavigationEvent, STILL } from "../../../app/board/navigation.ts";
import type { View } from "../../../app/board/board-controller.ts";
import { viewOfAll, viewOfPlace, zoomedAt } from "../../../app/board/zoom.ts";

const view: View = { x: 40, y: 20, scale: 12 };

function run(events: readonly NavigationEvent[]) {
  let [state, now, isTaken] = [STILL, view, false];
  for (const event of events) ({ state, view: now, isTaken } = navigate(state, now, event));
  return { state, view: now, isTaken };
}

const mouse = (type: "down" | "move", x: number, y: number, isMiddle = false): NavigationEvent => {
  return { type, pointerId: 1, screen: { x, y }, isTouch: false, isMiddle };
};
const finger = (type: "down" | "move", pointerId: number, x: number, y: number): NavigationEvent => {
  return { type, pointerId, screen: { x, y }, isTouch: true, isMiddle: false };
};

describe("moving about the sheet", () => {
  it("zooms at the pointer: what is under it stays under it", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 900 }),
        fc.integer({ min: 0, max: 600 }),
        fc.double({ min: 0.3, max: 3, noNaN: true }),
        (x, y, factor) => {
          const near = zoomedAt(view, factor, { x, y });
          expect((x - near.x) / near.scale).toBeCloseTo((x - view.x) / view.scale);
          expect((y - near.y) / near.scale).toBeCloseTo((y - view.y) / view.scale);
        },
      ),
    );
  });

  it("zooms in on a wheel turned away and leaves the tool alone", () => {
    const step = run([{ type: "wheel", screen: { x: 100, y: 100 }, turn: -100 }]);
    expect(step.view.scale).toBeGreaterThan(view.scale);
    expect(step.isTaken).toBe(true);
  });

  it("pans with the middle button, and with space held", () => {
    expect(run([mouse("down", 0, 0, true), mouse("move", 30, -10)]).view).toEqual({ x: 70, y: 10, scale: 12 });
    const space = { type: "space", isDown: true } as const;
    expect(run([space, mouse("down", 0, 0), mouse("move", 5, 6)]).view).toEqual({ x: 45, y: 26, scale: 12 });
  });

  it("leaves one finger and a plain button to the tool", () => {
    expect(run([finger("down", 1, 0, 0), finger("move", 1, 9, 9)]).isTaken).toBe(false);
    expect(run([mouse("down", 0, 0), mouse("move", 9, 9)])).toMatchObject({ isTaken: false, view });
  });

  it("pinches: the spots under both fingers stay under them", () => {
    const start = [finger("down", 1, 100, 100), finger("down", 2, 200, 100)];
    const { view: near, isTaken } = run([
      ...start,
      finger("move", 2, 300, 100),
      finger("move", 1, 90, 130),
      finger("move", 2, 290, 130),
    ]);
    expect(isTaken).toBe(true);
    expect(near.scale).toBeCloseTo(24);
    expect((90 - near.x) / near.scale).toBeCloseTo((100 - view.x) / view.scale);
    expect((290 - near.x) / near.scale).toBeCloseTo((200 - view.x) / view.scale);
  });

  it("means nothing else until both fingers are up", () => {
    const pinch = [finger("down", 1, 0, 0), finger("down", 2, 50, 0)];
    const oneUp = run([...pinch, { type: "up", pointerId: 2 }]);
    expect(navigate(oneUp.state, view, finger("move", 1, 30, 30))).toMatchObject({ isTaken: true, view });
    const bothUp = run([...pinch, { type: "up", pointerId: 2 }, { type: "up", pointerId: 1 }]);
    expect(navigate(bothUp.state, view, finger("down", 3, 0, 0)).isTaken).toBe(false);
  });
});

describe("bringing places into view", () => {
  const size = { width: 800, height: 600 };
  const isInside = (shown: View, x: number, y: number) =>
    x * shown.scale + shown.x >= 0 &&
    x * shown.scale + shown.x <= 800 &&
    y * shown.scale + shown.y >= 0 &&
    y * shown.scale + shown.y <= 600;

  it("shows the whole of a drawing", () => {
    const box = { left: -30, top: 5, right: 120, bottom: 90 };
    const shown = viewOfAll(box, size);
    expect(isInside(shown, -30, 5) && isInside(shown, 120, 90)).toBe(true);
  });

  it("stays put for a place in plain view and moves for one out of it", () => {
    expect(viewOfPlace(view, { left: 10, top: 10, right: 14, bottom: 12 }, size)).toBe(view);
    const atTheEdge = { left: 0, top: 0, right: 2, bottom: 1 };
    expect(viewOfPlace({ x: 0, y: 0, scale: 6 }, atTheEdge, size)).toEqual({ x: 0, y: 0, scale: 6 });
    const far = viewOfPlace(view, { left: 400, top: 300, right: 404, bottom: 302 }, size);
    expect(isInside(far, 402, 301)).toBe(true);
  });

  it("comes near enough to read", () => {
    expect(
      viewOfPlace({ x: 0, y: 0, scale: 3 }, { left: 10, top: 10, right: 14, bottom: 12 }, size).scale,
    ).toBeGreaterThan(12);
  });
});
