import type { Edit, Wire } from "../document/index.ts";
import { defineRule, type Finding, type Remedy, type Study } from "./rule.ts";
import { listOf, nameOf } from "./study/words.ts";

export const labelMissing = defineRule({
  id: "label-missing",
  level: "advice",
  about: "Wires without a number, or with the number of another: nobody can tell them apart in the dark.",
  source: "Fire and ambulance specifications: every wire numbered, each number once",
  check(study) {
    const wires = study.netlist.wires.map(({ wire }) => wire);
    const bare = wires.filter(({ label }) => !label);
    const groups = new Map<string, Wire[]>();
    for (const wire of wires) if (wire.label) groups.set(wire.label, [...(groups.get(wire.label) ?? []), wire]);
    const alike = [...groups.values()].filter((group) => group.length > 1);
    return [
      ...(bare.length > 0 ? [finding(study, bare, {}, bare)] : []),
      ...alike.map((group) => finding(study, group, { label: group[0]!.label! }, group.slice(1))),
    ];
  },
  say: (finding, study) =>
    finding.measure["label"] === undefined
      ? `${finding.at.length === 1 ? `${nameOf(study, finding.at[0]!)} has` : `${finding.at.length} wires have`} no number: you will not tell them apart in the dark.`
      : `${listOf(study, finding.at)} all have the number ${finding.measure["label"]}.`,
});

function finding(
  study: Study,
  wires: readonly Wire[],
  measure: Finding["measure"],
  renumber: readonly Wire[],
): Finding {
  return { at: wires.map(({ id }) => id), measure, remedies: [numbered(study, renumber)] };
}

/** Each gets the next number nobody has. */
function numbered({ netlist }: Study, wires: readonly Wire[]): Remedy {
  const taken = new Set(netlist.wires.map(({ wire }) => wire.label));
  let number = 0;
  const edits = wires.map(({ id }): Edit => {
    do number++;
    while (taken.has(String(number)));
    return { op: "set-wire", id, change: { label: String(number) } };
  });
  return { id: "number-wires", text: "Give each a number of its own", edits };
}
