import type { NetWire } from "../../netlist/index.ts";
import type { Hot } from "../../positions/index.ts";
import type { PaperSource } from "../paper.ts";

const HOTTEST_FIRST: readonly Hot[] = ["always", "at-rest", "switched", "never"];

/** When a wire is hot: the hotter of its two ends; `unknown` where the report doesn't say. */
export function wireHot(wire: NetWire, { report }: PaperSource): Hot | "unknown" {
  const ends = [wire.wire.from, wire.wire.to].map((address) => report.terminals[address]?.hot);
  return HOTTEST_FIRST.find((hot) => ends.includes(hot)) ?? "unknown";
}

const HOT_WORDS: Readonly<Record<Hot | "unknown", string>> = {
  always: "always",
  "at-rest": "at\u00a0rest",
  switched: "switched",
  never: "never",
  unknown: "not known",
};

/** In a column headed "Hot". */
export function hotWords(hot: Hot | "unknown"): string {
  return HOT_WORDS[hot];
}

/** Hot with everything at rest, key out. */
export function isHotAtRest(hot: Hot | "unknown" | undefined): boolean {
  return hot === "always" || hot === "at-rest";
}
