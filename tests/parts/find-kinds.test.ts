import { describe, expect, it } from "vitest";
import { findKinds, partKinds } from "../../core/parts/index.ts";

describe("finding a part by what people call it", () => {
  it.each([
    ["earth bar", "ground-strip"],
    ["light", "lamp"],
    ["battery isolator", "switch"],
    ["ignition", "key-switch"],
    ["pump", "motor"],
    ["fuse box", "fuse-block"],
    ["connector", "plug"],
    ["frame", "chassis"],
    ["RELAY", "relay"],
    ["batt", "battery"],
    ["dc-dc", "converter"],
    ["heater", "load"],
  ])("%s finds %s first", (typed, kind) => {
    expect(findKinds(typed)[0]?.kind).toBe(kind);
  });

  it("shows the whole Shelf while nothing is typed, and nothing for a word no one uses", () => {
    expect(findKinds("  ")).toEqual(partKinds);
    expect(findKinds("zebra")).toEqual([]);
  });

  it("finds by the beginning of a word, not by its middle", () => {
    expect(findKinds("rel").map(({ kind }) => kind)).toContain("relay");
    expect(findKinds("elay")).toEqual([]);
  });
});
