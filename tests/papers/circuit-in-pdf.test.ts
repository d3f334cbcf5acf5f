import { describe, expect, test } from "vitest";
import { readCircuitFile } from "../../core/file/index.ts";
import { circuitForPdf, circuitInPdf } from "../../core/papers/index.ts";
import { awningLamps } from "./support/awning-lamps.ts";

const bytesOf = (text: string) => Uint8Array.from(text, (character) => character.charCodeAt(0));
const attached = (text: string, length = text.length) =>
  bytesOf(`%PDF-1.3\n9 0 obj\n<< /Type /EmbeddedFile /Length ${length} >>\nstream\n${text}\nendstream\nendobj\n%%EOF`);

describe("the circuit attached to a PDF", () => {
  test("comes back out exactly, whatever a person typed into it", () => {
    const document = {
      ...awningLamps,
      sheet: { title: "endstream\nendobj Ω 灯 \ud83d\udd0b\u2028 /EmbeddedFile stream" },
    };
    const text = circuitForPdf(document);
    expect(text).toMatch(/^[\n\u0020-\u007e]*$/);
    expect(text).not.toContain("endstream");
    const read = readCircuitFile(circuitInPdf(attached(text))!);
    expect(read).toEqual({ ok: true, document });
  });

  test("is absent from a PDF of someone else's, from one cut short, and from one that attaches no JSON", () => {
    expect(circuitInPdf(bytesOf("%PDF-1.7 nothing attached"))).toBeNull();
    expect(circuitInPdf(attached(circuitForPdf(awningLamps)).subarray(0, 400))).toBeNull();
    expect(circuitInPdf(attached("PK\u0003\u0004"))).toBeNull();
    expect(circuitInPdf(attached("{}", 99_999_999))).toBeNull();
  });

  test("is not looked for without end", () => {
    const many = bytesOf("/EmbeddedFile /Length 9 stream\n".repeat(20_000));
    expect(circuitInPdf(many)).toBeNull();
  });
});
