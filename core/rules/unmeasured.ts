import { factsOf } from "../parts/index.ts";
import { defineRule, type Finding } from "./rule.ts";
import { nameOf } from "./study/words.ts";

export const unmeasured = defineRule({
  id: "unmeasured",
  level: "cant-check",
  about: "A wire of the vehicle that nobody has proved with a meter yet; it goes on the measure-first list.",
  source: "Common practice: colours lie, always measure",
  check: ({ netlist }) => [
    ...netlist.parts.flatMap(({ part }): Finding[] => {
      if (factsOf(part).feed?.measured !== false) return [];
      const edits = [{ op: "set-props" as const, id: part.id, change: { measured: true } }];
      return [{ at: [part.id], measure: {}, remedies: [{ ...proved, edits }] }];
    }),
    ...netlist.wires.flatMap(({ wire }): Finding[] => {
      if (wire.measured !== false) return [];
      const edits = [{ op: "set-wire" as const, id: wire.id, change: { measured: undefined } }];
      return [{ at: [wire.id], measure: {}, remedies: [{ ...proved, edits }] }];
    }),
  ],
  say: (finding, study) =>
    `Nobody has measured ${nameOf(study, finding.at[0]!)} yet: prove it with a meter in every key position before you cut anything.`,
});

const proved = { id: "mark-measured", text: "It has been measured and is as drawn" };
