import type { TerminalStanding } from "./types.ts";

/** When and how a piece of metal is hot. */
export type Heat = Pick<TerminalStanding, "hot" | "via" | "when" | "atRest">;

export const COLD: Heat = { hot: "never", via: null, when: "never", atRest: null };
export const ALWAYS_HOT: Heat = { hot: "always", via: "direct", when: "always", atRest: "direct" };
