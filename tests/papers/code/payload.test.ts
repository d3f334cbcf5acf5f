import fc from "fast-check";
import { deflateSync, strToU8 } from "fflate";
import { describe, expect, test } from "vitest";
import { EXAMPLES } from "../../../core/examples/index.ts";
import { fromBase43, toBase43 } from "../../../core/papers/code/base43.ts";
import { CODE_WORDS } from "../../../core/papers/code/code-words.ts";
import { circuitInPayload, circuitPayload } from "../../../core/papers/index.ts";
import { placeMissing } from "../../../core/placing/index.ts";
import { awningLamps } from "../support/awning-lamps.ts";

test.each(EXAMPLES)("the demo $name comes back exactly from its code, alone or in a link", ({ document }) => {
  const payload = circuitPayload(document);
  for (const text of [payload, `  ${payload}\n`, `https://example.org/app/?x=1#${payload}`])
    expect(circuitInPayload(text)).toEqual({ ok: true, document: placeMissing(document) });
});

test("any bytes come back from base 43, in characters a scanned code and the end of an address both take", () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
      const text = toBase43(bytes);
      expect(text).toMatch(/^[0-9A-Z$*+\-./:]*$/);
      expect(encodeURI(text)).toBe(text);
      expect(fromBase43(text)).toEqual(bytes);
    }),
  );
});

describe("refused with the reason", () => {
  const payload = circuitPayload(awningLamps);
  const errorOf = (text: string) => {
    const read = circuitInPayload(text);
    return "error" in read ? read.error : null;
  };
  const packed = (text: string) => {
    const plain = strToU8(text);
    let [a, b] = [1, 0];
    for (const byte of plain) [a, b] = [(a + byte) % 65521, (b + a + byte) % 65521];
    const bytes = deflateSync(plain, { dictionary: strToU8(CODE_WORDS) });
    return `GS1:${toBase43(Uint8Array.of(...bytes, b >> 8, b & 255, a >> 8, a & 255))}`;
  };

  test("text that holds no code", () => {
    expect(errorOf("https://example.org/")).toMatch(/no code of ours/);
  });

  test("a code cut short anywhere, or with one character changed", () => {
    for (const length of [4, 5, 6, 7, 40, payload.length - 3, payload.length - 1])
      expect(errorOf(payload.slice(0, length))).toMatch(/damaged or cut short/);
    for (let at = 4; at < payload.length; at += 7) {
      const other = payload[at] === "0" ? "1" : "0";
      expect(errorOf(payload.slice(0, at) + other + payload.slice(at + 1))).not.toBeNull();
    }
  });

  test("a whole code around a circuit file that can't be used", () => {
    expect(errorOf(packed("[]"))).toMatch(/wanted an object/);
    expect(errorOf(packed('{"format":"groundstrap","version":2,"parts":[],"wires":[]}'))).toMatch(/newer Groundstrap/);
    const twice = { id: "a", kind: "splice" };
    expect(
      errorOf(packed(JSON.stringify({ format: "groundstrap", version: 1, parts: [twice, twice], wires: [] }))),
    ).toMatch(/"a"/);
  });

  test("a code that would unpack to more than a circuit file may hold, or is longer than any of ours", () => {
    expect(errorOf(packed(" ".repeat(6_000_000)))).toMatch(/5 MB/);
    expect(errorOf(`GS1:${"0".repeat(20_001)}`)).toMatch(/20001 characters/);
  });

  test("random text behind the mark", () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom(..."0123456789ABCZ$*+-./:".split("")), maxLength: 400 }),
        (text) => {
          expect(errorOf(`GS1:${text}`)).not.toBeNull();
        },
      ),
    );
  });
});
