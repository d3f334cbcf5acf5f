import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { analyse } from "../../core/analyse.ts";
import { readCircuitFile } from "../../core/file/index.ts";
import type { Level, Snag } from "../../core/rules/index.ts";

/** A circuit file of tests/circuits with what the contract says of it, worked out by hand. */
interface Case {
  /** Which words of the contract it holds the program to. */
  readonly about: string;
  /** How the numbers were worked out. */
  readonly worked?: string;
  readonly circuit: unknown;
  readonly expect: {
    /** Part of the report, as nested as it is; numbers within a part in 10 000. */
    readonly report?: Nested;
    /** Keys that must not be there, as paths. */
    readonly absent?: readonly string[];
    /** Snags that must be raised: rule, and where said its level and places it names. */
    readonly snags?: readonly { readonly rule: string; readonly level?: Level; readonly at?: readonly string[] }[];
    /** Rules that must not be raised; `rule@place` for one that must not name a place. */
    readonly not?: readonly string[];
  };
}

interface Nested {
  readonly [key: string]: unknown;
}

const folder = new URL("../circuits/", import.meta.url);
const cases = readdirSync(folder)
  .filter((name) => name.endsWith(".json"))
  .sort()
  .map((name) => ({ name, case: JSON.parse(readFileSync(new URL(name, folder), "utf8")) as Case }));

describe.each(cases)("$name", ({ case: { about, circuit, expect: wanted } }) => {
  test(`${about}`, () => {
    const opened = readCircuitFile(JSON.stringify(circuit));
    if (!opened.ok) throw new Error(opened.error);
    const { report } = analyse(opened.document);
    const found = [
      ...differences("", report, wanted.report ?? {}),
      ...(wanted.absent ?? []).filter((path) => at(report, path) !== undefined).map((path) => `${path} is there`),
      ...(wanted.snags ?? [])
        .filter((snag) => !report.snags.some((raised) => isLike(raised, snag)))
        .map((snag) => `no snag like ${JSON.stringify(snag)}; raised: ${raisedAs(report.snags)}`),
      ...(wanted.not ?? []).flatMap((unwanted) => raised(report.snags, unwanted)),
    ];
    expect(found).toEqual([]);
  });
});

/** Lines that say where `got` differs from what is `wanted` of it. */
function differences(path: string, got: unknown, wanted: unknown): string[] {
  if (typeof wanted === "number" && typeof got === "number") {
    const isNear = Math.abs(got - wanted) <= 1e-6 + 1e-4 * Math.abs(wanted);
    return isNear ? [] : [`${path}: got ${got}, wanted ${wanted}`];
  }
  if (typeof wanted !== "object" || wanted === null || typeof got !== "object" || got === null) {
    return Object.is(got, wanted) ? [] : [`${path}: got ${JSON.stringify(got)}, wanted ${JSON.stringify(wanted)}`];
  }
  return Object.entries(wanted).flatMap(([key, value]) =>
    differences(path === "" ? key : `${path}.${key}`, (got as Nested)[key], value),
  );
}

function at(report: unknown, path: string): unknown {
  return path.split(" ").reduce((value, key) => (value as Nested | undefined)?.[key], report);
}

function isLike(
  snag: Snag,
  wanted: { readonly rule: string; readonly level?: string; readonly at?: readonly string[] },
): boolean {
  if (snag.rule !== wanted.rule || (wanted.level !== undefined && wanted.level !== snag.level)) return false;
  return (wanted.at ?? []).every((place) => snag.at.includes(place));
}

function raised(snags: readonly Snag[], unwanted: string): string[] {
  const [rule, place] = unwanted.split("@");
  const found = snags.filter((snag) => snag.rule === rule && (place === undefined || snag.at.includes(place)));
  return found.map((snag) => `unwanted ${unwanted}: ${snag.level} at ${snag.at.join(", ")}: ${snag.text}`);
}

function raisedAs(snags: readonly Snag[]): string {
  return snags.map(({ rule, level, at: places }) => `${rule} (${level}) ${places.join(" ")}`).join("; ");
}
