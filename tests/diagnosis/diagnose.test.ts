import { describe, expect, test } from "vitest";
import type { Document, TakenReading } from "../../core/document/index.ts";
import { diagnose } from "../../core/diagnosis/index.ts";
import { circuit } from "../support/circuit.ts";

/** A 12 V battery with nothing inside, a fuse, a switch, a 4 ohm heater: 3 A through every joint. */
const heater: Document = circuit(
  ["bat:battery 12V internalMilliohm=0 > f1:fuse 10A > s1:switch > h1:load model=resistor ohms=4 > gs:strip > bat.-"],
  { situations: { on: { s1: "on" } } },
);

const volts = (red: string, black: string | undefined, value: number, situation = "on"): TakenReading => ({
  situation,
  meter: "V",
  red,
  ...(black === undefined ? {} : { black }),
  value,
});

describe("a wrong reading", () => {
  test("names the whole run of places it can't tell apart, with the ohms that explain it", () => {
    // 1 ohm more in series with 4 ohm across 12 V leaves 12 · 4/5 = 9.6 V.
    const wrong = volts("h1.+", "h1.-", 9.6);
    const [best] = diagnose(heater, [wrong], wrong);
    expect(best!.extraOhm).toBeGreaterThan(0.9);
    expect(best!.extraOhm).toBeLessThan(1.1);
    for (const place of ["w1", "f1", "w2", "s1.2", "w3", "w4", "w5"]) expect(best!.at).toContain(place);
  });

  test("is pinned to one place by readings taken either side of it", () => {
    // The volts are lost across the switch: 12 V into it, 9.6 V out of it, and nothing lost in the return.
    const wrong = volts("h1.+", "h1.-", 9.6);
    const readings = [volts("s1.1", "bat.-", 12), volts("s1.2", "bat.-", 9.6), volts("h1.-", "bat.-", 0), wrong];
    const [best] = diagnose(heater, readings, wrong);
    expect(best!.at).toEqual(["s1.2"]);
    expect(best!.text).toMatch(/^About (0\.9\d|1) Ω too much in contact 1 to 2 of S1/);
    expect(best!.explains).toBe(4);
  });

  test("on the return is not blamed on the feed", () => {
    const wrong = volts("h1.-", "bat.-", 2.4);
    const [best] = diagnose(heater, [volts("h1.+", "bat.-", 12), wrong], wrong);
    expect(best!.at).toEqual(["w4", "w5"]);
  });

  test("of nothing at all is a break, a blown fuse or a great many ohms", () => {
    const wrong = volts("h1.+", "h1.-", 0);
    const found = diagnose(heater, [wrong, volts("f1.1", "bat.-", 12), volts("f1.2", "bat.-", 0)], wrong);
    expect(found.flatMap(({ at }) => at)).toContain("f1");
    expect(found.map(({ text }) => text).join()).toMatch(/has blown/);
  });

  test("that is low everywhere by the same is the battery's", () => {
    const wrong = volts("f1.1", undefined, 11.4, "rest");
    const found = diagnose(heater, [wrong, volts("h1.+", "h1.-", 11.4), volts("h1.-", "bat.-", 0)], wrong);
    expect(found[0]!.at).toEqual(["bat"]);
    expect(found[0]!.text).toMatch(/gives 0\.6 V less/);
  });

  test("of amps counts too: a clamp on the fuse that reads low", () => {
    const wrong: TakenReading = { situation: "on", meter: "A", red: "f1", value: 2.4 };
    const [best] = diagnose(heater, [wrong], wrong);
    expect(best!.extraOhm).toBeGreaterThan(0.8);
  });

  test("of ohms along one wire is that wire's own", () => {
    const wrong: TakenReading = { situation: "dead", meter: "ohm", red: "f1.2", black: "s1.1", value: 3 };
    const [best] = diagnose(heater, [wrong], wrong);
    expect(best!.at).toEqual(["w2"]);
  });

  test("that nothing in the drawing could give, or of a place that is not in it, explains nothing", () => {
    const high = volts("h1.-", "bat.-", 90);
    expect(diagnose(heater, [high], high).filter(({ extraOhm }) => extraOhm !== null)).toEqual([]);
    const gone = volts("x9.1", "bat.-", 3);
    expect(diagnose(heater, [gone], gone)).toEqual([]);
    const elsewhere = volts("h1.+", "h1.-", 3, "nowhere");
    expect(diagnose(heater, [elsewhere], elsewhere)).toEqual([]);
  });
});
