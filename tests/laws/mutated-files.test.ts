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

/** What is wrong with how a file is taken: not in one line, not analysed like every other, or not saved as it was. */
function faultsOf(text: string): { wasAccepted: boolean; faults: string[] } {
  const opened = readCircuitFile(text);
  if (!opened.ok) return { wasAccepted: false, faults: /^[^\p{Cc}]{1,300}$/u.test(opened.error) ? [] : [opened.error] };
  const report = JSON.stringify(analyse(opened.document).report);
  const again = readCircuitFile(writeCircuitFile(opened.document));
  return {
    wasAccepted: true,
    faults: [
      ...(report.startsWith('{"format":"groundstrap-report","version":1,') ? [] : ["no report"]),
      ...(/NaN|Infinity/.test(report) ? ["a number that is none"] : []),
      ...(JSON.stringify(again) === JSON.stringify(opened) ? [] : ["saved otherwise"]),
    ],
  };
}

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
          const { wasAccepted, faults } = faultsOf(JSON.stringify(file));
          if (wasAccepted) accepted++;
          expect(faults).toEqual([]);
        },
      ),
      { numRuns: RUNS },
    );
    // Else the law says nothing.
    expect(accepted).toBeGreaterThan(RUNS / 20);
  },
  PATIENCE_MS,
);
