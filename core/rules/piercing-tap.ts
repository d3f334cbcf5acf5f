import { factsOf } from "../parts/index.ts";
import { defineRule, type Finding } from "./rule.ts";
import { placeName } from "./study/words.ts";

export const piercingTap = defineRule({
  id: "piercing-tap",
  level: "advice",
  about: "A tap that bites through the insulation lets water in and cuts strands.",
  source:
    "California DOT equipment standard 3.2: wire-piercing splices shall not be used; a truck maker's builder guide",
  check: ({ netlist }) =>
    netlist.parts.flatMap(({ part }): Finding[] => {
      if (factsOf(part).splice?.tap !== "piercing") return [];
      const edits = [{ op: "set-props" as const, id: part.id, change: { tap: "crimp" } }];
      return [
        { at: [part.id], measure: {}, remedies: [{ id: "sealed-crimp", text: "Make it a sealed crimp", edits }] },
      ];
    }),
  say: (finding, study) =>
    `${placeName(finding, study)} bites into the wire: it will corrode, and the fault will come and go.`,
});
