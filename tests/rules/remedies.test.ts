import { describe, expect, test } from "vitest";
import { applyEdits, type Document } from "../../core/document/index.ts";
import { rules, type Snag } from "../../core/rules/index.ts";
import { snagsOf } from "../support/judged.ts";
import { failing } from "./failing-circuits.ts";

/** Rules whose findings the drawing itself can't put right: somebody must look, enter a number or choose another part. */
const NEEDS_A_PERSON: Readonly<Record<string, string>> = {
  "cant-check": "only the person knows the number",
  "factory-feed-load": "what the vehicle's maker allows can't be drawn",
  "pulsed-trigger": "another signal must be found",
  "mid-tap": "a converter must be chosen",
  "relay-chatter": "what was meant is not known",
  "relay-miswired": "what was meant is not known",
  "two-feeds": "which of the two is wanted is not known",
  "rest-drain": "what may stay on is the person's choice",
  "plug-function": "a plug with more ways must be chosen",
  "alternator-over": "what to switch off is the person's choice",
};

/** The snag is the same one when the rule and its place are, whatever the numbers. */
const keyOf = ({ rule, at }: Snag) => `${rule} ${at[0]}`;

function curesOf(
  rule: string,
  document: Document,
): { id: string; before: readonly Snag[]; after: readonly Snag[]; snag: Snag }[] {
  const before = snagsOf(document);
  return before
    .filter((snag) => snag.rule === rule)
    .flatMap((snag) =>
      snag.remedies
        .filter(({ edits }) => edits.length > 0)
        .map(({ id, edits }) => ({ id, snag, before, after: snagsOf(applyEdits(document, edits)) })),
    );
}

test("every rule has a drawing that breaks it", () => {
  expect(Object.keys(failing).toSorted()).toEqual(rules.map(({ id }) => id).toSorted());
  const unbroken = Object.entries(failing).filter(([rule, documents]) =>
    documents.some((document) => snagsOf(document, rule).length === 0),
  );
  expect(unbroken.map(([rule]) => rule)).toEqual([]);
});

describe.each(Object.entries(failing))("remedies of %s", (rule, documents) => {
  const cures = documents.flatMap((document) => curesOf(rule, document));

  test("clear what they are for and bring nothing that must not be powered up", () => {
    for (const { id, snag, before, after } of cures) {
      expect(after.map(keyOf), `${id} at ${snag.at[0]}`).not.toContain(keyOf(snag));
      const stops = (snags: readonly Snag[]) => snags.filter(({ level }) => level === "stop").map(keyOf);
      expect(
        stops(after).filter((key) => !stops(before).includes(key)),
        `${id} brings`,
      ).toEqual([]);
    }
  });

  test("are there wherever the drawing can put it right", () => {
    expect(cures.length > 0).toBe(!(rule in NEEDS_A_PERSON));
  });
});
