import fc from "fast-check";
import { expect, test } from "vitest";
import { analyse } from "../../core/analyse.ts";
import type { Document } from "../../core/document/index.ts";
import { readCircuitFile, writeCircuitFile } from "../../core/file/index.ts";
import { randomCircuit } from "./random-circuits.ts";

const RUNS = Number(process.env["RUNS"] ?? 300);
const PATIENCE_MS = Math.max(120_000, RUNS * 100);

/** What a slip of the pen, another program or malice might put into a file. */
const odd = fc.oneof(
  fc.constantFrom<unknown>(null, true, "", "on", "off", "bat.+", "__proto__", "constructor", [], {}, [[]], { "": 0 }),
  fc.constantFrom(0, -0, -1, 0.5, 1, 64, 65, 1e-12, 1e9, 1e308, -1e308, 5e-324),
  fc.jsonValue({ maxDepth: 2 }),
);

type Node = Record<string, unknown>;

/** Changes one value somewhere in a file: replaces it, takes it out, repeats it or names it otherwise. */
function mutate(
  file: unknown,
  steps: readonly number[],
  how: "replace" | "remove" | "repeat" | "rename",
  value: unknown,
): void {
  let at = file as Node;
  for (const [depth, step] of steps.entries()) {
    const keys = Object.keys(at);
    if (keys.length === 0) return;
    const key = keys[step % keys.length]!;
    const next = at[key];
    if (depth < steps.length - 1 && typeof next === "object" && next !== null) {
      at = next as Node;
      continue;
    }
    if (how === "replace") at[key] = value;
    else if (how === "remove") delete at[key];
    else if (how === "repeat" && Array.isArray(at)) at.push(structuredClone(next));
    else
      Object.defineProperty(at, typeof value === "string" ? value : "other", {
        value: next,
        enumerable: true,
        configurable: true,
        writable: true,
      });
    return;
  }
}

const mutation = fc.record({
  steps: fc.array(fc.nat(30), { minLength: 1, maxLength: 6 }),
  how: fc.constantFrom("replace", "replace", "replace", "remove", "repeat", "rename") as fc.Arbitrary<"replace">,
  value: odd,
});

test(
  "a file changed anywhere, any way, is refused in one line or analysed like every other",
  () => {
    let accepted = 0;
    fc.assert(
      fc.property(
        randomCircuit({ chains: { min: 1, max: 2 }, strays: 1, unknowns: true }),
        fc.array(mutation, { minLength: 1, maxLength: 3 }),
        (document: Document, mutations) => {
          const file: unknown = structuredClone(document);
          for (const { steps, how, value } of mutations) mutate(file, steps, how, structuredClone(value));
          const opened = readCircuitFile(JSON.stringify(file));
          if (!opened.ok) {
            expect(opened.error).toMatch(/^[^\p{Cc}]{1,300}$/u);
            return;
          }
          accepted++;
          const { report } = analyse(opened.document);
          expect(JSON.parse(JSON.stringify(report))).toMatchObject({ format: "groundstrap-report", version: 1 });
          expect(JSON.stringify(report)).not.toMatch(/NaN|Infinity/);
          const again = readCircuitFile(writeCircuitFile(opened.document));
          expect(again).toEqual(opened);
        },
      ),
      { numRuns: RUNS },
    );
    // Else the law says nothing.
    expect(accepted).toBeGreaterThan(RUNS / 20);
  },
  PATIENCE_MS,
);
