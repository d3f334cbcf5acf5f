import { describe, expect, test } from "vitest";
import { analyse } from "../../core/analyse.ts";
import type { Document } from "../../core/document/index.ts";
import { touchTest } from "../../core/touch/index.ts";
import { circuit } from "../support/circuit.ts";

function touch(document: Document, at: string) {
  const { study } = analyse(document);
  return touchTest(study, study.situations[0]!, at);
}

const relay = circuit([
  "bat:battery > f1:fuse 10A >(14 AWG, 3 m, id=feed)> k1:relay contact=changeover",
  "k1.87 > la1:led 27W > bat.-",
]);

describe("the touch test", () => {
  test("a live relay pin says hot, how hard it shorts, and that its fuse stops it in time", () => {
    const found = touch(relay, "k1.87a");
    expect(found).toMatchObject({ hot: "always", via: "direct", bare: true, guard: { at: "f1", ratingA: 10 } });
    expect(found?.volts).toBeCloseTo(12.6, 6);
    // Loop: 6 mohm battery, 0.1 m 10 AWG (0.33), 7.7 fuse, 3 m 14 AWG (24.85), 5 contact: about 43.9 mohm, 287 A.
    expect(found?.faultA).toBeGreaterThan(280);
    expect(found?.faultA).toBeLessThan(295);
    // Over six times a 10 A blade fuse: 0.1 s at most (ISO 8820-3 limits, see the fuse gates).
    expect(found?.clearsWithinS).toBe(0.1);
  });

  test("a wire behind its fuse survives, one before it does not", () => {
    expect(touch(relay, "feed")?.survives).toBe(true);
    expect(touch(relay, "w1")?.survives).toBe(false);
  });

  test("a return is cold and nothing needs to stop it", () => {
    expect(touch(relay, "la1.-")).toMatchObject({ hot: "never", guard: undefined, faultA: null, survives: null });
  });

  test("a place that is not in the drawing has no answer", () => {
    expect(touch(relay, "nobody.1")).toBeNull();
  });
});
