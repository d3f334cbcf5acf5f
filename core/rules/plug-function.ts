import { factsOf } from "../parts/index.ts";
import { defineRule, type Finding } from "./rule.ts";
import { placeName } from "./study/words.ts";

export const plugFunction = defineRule({
  id: "plug-function",
  level: "fix",
  about: "One way of a plug has two jobs: working one works the other.",
  source: "Practitioners' trailer notes; common practice",
  check: ({ netlist }) =>
    netlist.parts.flatMap(({ part }) => {
      const { plug } = factsOf(part);
      return (plug?.pairs ?? []).flatMap(([half], at): Finding[] => {
        const jobs = plug!.functions[at] ?? [];
        if (jobs.length < 2) return [];
        const way = `${part.id}.${half}`;
        const remedies = [
          { id: "way-each", text: "Give each job a way of its own, or fit a plug with more ways", edits: [] },
        ];
        return [{ at: [part.id, way], measure: { jobs: jobs.join(" and ") }, remedies }];
      });
    }),
  say: (finding, study) =>
    `${placeName(finding, study, 1)} already has a job: ${finding.measure["jobs"]} share it, and working one works the other.`,
});
