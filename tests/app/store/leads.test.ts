import { describe, expect, test } from "vitest";
import { leadsAfter } from "../../../app/store/leads.ts";
import type { Lead } from "../../../app/board/board-controller.ts";

const meter = (leads: readonly Lead[], at: string) =>
  leadsAfter({ instrument: "meter", dial: "volts", leads }, at) as readonly Lead[];

describe("leads", () => {
  test("of a meter go down red, black, and then each in turn", () => {
    const red = meter([], "b1.+");
    const both = meter(red, "b1.-");
    const moved = meter(both, "f1.1");
    expect(red).toEqual([{ at: "b1.+", mark: "red" }]);
    expect(both[1]).toEqual({ at: "b1.-", mark: "black" });
    expect(moved).toEqual([
      { at: "b1.-", mark: "black" },
      { at: "f1.1", mark: "red" },
    ]);
    expect(meter(moved, "f1.2")[1]).toEqual({ at: "f1.2", mark: "black" });
  });

  test("a finger points at one place, wires too", () => {
    const touch = { instrument: "touch", dial: "volts", leads: [] } as const;
    expect(leadsAfter(touch, "w1")).toEqual([{ at: "w1", mark: "finger" }]);
  });

  test("the wrong sort of place is answered with the right one", () => {
    expect(leadsAfter({ instrument: "meter", dial: "volts", leads: [] }, "w1")).toContain("terminal");
    expect(leadsAfter({ instrument: "meter", dial: "amps", leads: [] }, "b1.+")).toContain("wire");
  });
});
