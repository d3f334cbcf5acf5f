import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatWireSize, parseWireSize, wireSizeText } from "../../core/units/index.ts";

const read = (typed: string) => {
  const size = parseWireSize(typed);
  return size.ok ? wireSizeText(size.value) : null;
};

describe("reading a wire size", () => {
  it.each([
    ["16 AWG", "16 AWG"],
    ["16", "16 AWG"],
    ["16 awg", "16 AWG"],
    ["16awg", "16 AWG"],
    ["AWG 16", "16 AWG"],
    ["#10", "10 AWG"],
    ["12 ga", "12 AWG"],
    ["1/0", "1/0 AWG"],
    ["1/0 AWG", "1/0 AWG"],
    ["0", "1/0 AWG"],
    ["00", "2/0 AWG"],
    ["4/0 AWG", "4/0 AWG"],
    ["1.5 mm2", "1.5 mm2"],
    ["1,5 mm²", "1.5 mm2"],
    ["1.5mm2", "1.5 mm2"],
    ["0.75 mm^2", "0.75 mm2"],
    ["70 sq mm", "70 mm2"],
  ])("takes %j as %s", (typed, size) => {
    expect(read(typed)).toBe(size);
  });

  it.each(["", "5/0 AWG", "41 AWG", "-3", "1.5", "0 mm2", "2000 mm2", "16 mm", "thick", "1.5 mm2 blue"])(
    "refuses %j",
    (typed) => {
      expect(parseWireSize(typed)).toMatchObject({ ok: false, got: typed });
    },
  );

  it("reads back every size it writes", () => {
    const gauges = fc.integer({ min: -3, max: 40 }).map((gauge) => ({ system: "awg" as const, gauge }));
    const areas = fc
      .integer({ min: 1, max: 100_000 })
      .map((hundredths) => ({ system: "mm2" as const, areaMm2: hundredths / 100 }));
    fc.assert(
      fc.property(fc.oneof(gauges, areas), (size) => {
        expect(parseWireSize(wireSizeText(size))).toEqual({ ok: true, value: size });
      }),
    );
  });

  it("shows a raised 2 to people", () => {
    expect(formatWireSize("1.5 mm2")).toBe("1.5 mm²");
    expect(formatWireSize("1/0 AWG")).toBe("1/0 AWG");
    expect(formatWireSize("what?")).toBe("what?");
  });
});
