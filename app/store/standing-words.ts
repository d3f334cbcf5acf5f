import type { ReportTerminal } from "../../core/report/index.ts";

const HOT_WORDS = { always: "always hot", "at-rest": "hot at rest", switched: "switched", never: "never hot" } as const;

/** How a terminal stands over all positions: "hot at rest through a load, while S1 is off". */
export function standingWords(standing: ReportTerminal | undefined): string {
  if (standing === undefined) return "not analysed yet";
  const { hot, via, when } = standing;
  const through = via === "load" ? " through a load" : "";
  const condition = hot === "at-rest" || hot === "switched" ? `, while ${when}` : "";
  return `${HOT_WORDS[hot]}${through}${condition}`;
}
