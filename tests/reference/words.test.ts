import { describe, expect, it } from "vitest";
import {
  cautions,
  leadAcidChargePercent,
  parseWireColour,
  terminalMeaning,
  wireColourName,
  wireColours,
} from "../../core/reference/index.ts";

describe("colour letters", () => {
  it("are those of the standard, in its order", () => {
    // IEC 60757 Table 1 as printed in GOST 28763-90 (green-and-yellow reads as green with a yellow tracer).
    expect(wireColours.map((colour) => colour.code).join(" ")).toBe("BK BN RD OG YE GN BU VT GY WH PK GD TQ SR");
  });

  it("read RDBU as red with a blue tracer", () => {
    // IEC 60757:2021 clause 5 gives RDBU as its example.
    expect(wireColourName("RDBU")).toBe("red with blue tracer");
    expect(wireColourName("GNYE")).toBe("green with yellow tracer");
  });

  it.each(["rd", "RD/BU", "rd-bu", " RD BU "])("take %j as people write it", (letters) => {
    expect(parseWireColour(letters)?.base.code).toBe("RD");
  });

  it.each(["", "R", "XX", "RDXX", "RDBUGN", "red"])("have no answer for %j", (letters) => {
    expect(parseWireColour(letters)).toBeNull();
    expect(wireColourName(letters)).toBe(letters);
  });
});

describe("terminal marks", () => {
  it("tell the two contacts of a relay apart", () => {
    // DIN 72552 lists: 87 the make contact, 87a the break contact.
    expect(terminalMeaning("87")).toMatch(/pulled in/);
    expect(terminalMeaning("87a")).toMatch(/at rest/);
    expect(terminalMeaning("99")).toBeNull();
  });
});

describe("charge left in a battery", () => {
  it("is between its neighbours between two listed voltages", () => {
    // Hand: halfway from 12.24 (50 %) to 12.45 V (75 %).
    expect(leadAcidChargePercent(12.345, 12)).toBeCloseTo(62.5, 9);
  });

  it("stops at empty and at full", () => {
    expect(leadAcidChargePercent(13.2, 12)).toBe(100);
    expect(leadAcidChargePercent(10, 12)).toBe(0);
  });
});

describe("cautions", () => {
  it("each name a source or say that they are from memory", () => {
    for (const caution of cautions) expect(caution.source === "from memory").toBe(caution.fromMemory === true);
  });

  it("put the negative lead, the fuse, eyes, airbags and vapour on every paper", () => {
    const printed = cautions.filter((caution) => caution.onPapers).map((caution) => caution.id);
    expect(printed).toEqual(
      expect.arrayContaining(["negative-first", "fuse-last", "eyes", "airbags", "vapour", "plan-only"]),
    );
  });
});
