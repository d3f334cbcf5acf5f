import type { Edit } from "../document/index.ts";
import type { NetPart, NetTerminal, NetWire } from "../netlist/index.ts";
import { factsOf } from "../parts/index.ts";
import { barrelFits, barrelFor } from "../reference/index.ts";
import { formatNumber } from "../units/index.ts";
import { defineRule, type Finding, type Remedy, type Study } from "./rule.ts";
import { nameOf, placeName } from "./study/words.ts";

export const barrelMisfit = defineRule({
  id: "barrel-misfit",
  level: "fix",
  about:
    "The copper in a crimp, all its wires together, is outside what its barrel takes; or two rings on a stud are for different studs.",
  source: "Terminal makers' barrel ranges; wires in one barrel by their summed area (a maker's guide)",
  check: (study) => [
    ...study.netlist.parts.flatMap((part) => joint(study, part)),
    ...study.netlist.wires.flatMap((wire) => [...crimp(wire, "from"), ...crimp(wire, "to")]),
    ...study.netlist.terminals.flatMap((terminal) => rings(study, terminal)),
  ],
  say(finding, study) {
    const { barrel, areaMm2, studs } = finding.measure;
    if (studs !== undefined)
      return `Rings for ${studs} share ${nameOf(study, finding.at[0]!)}: one of them sits loose.`;
    return `${placeName(finding, study)}: ${formatNumber(Number(areaMm2))} mm² of copper does not fit the ${barrel} barrel; a wire pulls out or is crushed.`;
  },
});

/** A splice: every wire end in it counts. */
function joint({ netlist }: Study, { part, terminals }: NetPart): Finding[] {
  const barrel = factsOf(part).splice?.barrel ?? null;
  const wires = [...new Set(terminals.flatMap((terminal) => terminal.wires))].map((index) => netlist.wires[index]!);
  if (barrel === null || wires.length === 0 || wires.some(({ areaMm2 }) => areaMm2 === null)) return [];
  const areaMm2 = wires.reduce((sum, wire) => sum + wire.areaMm2!, 0);
  const edit = (fitting: string): Edit => ({ op: "set-props", id: part.id, change: { barrel: fitting } });
  return misfit([part.id, ...wires.map(({ wire }) => wire.id)], barrel, areaMm2, edit);
}

/** A terminal crimped on one end of one wire. */
function crimp({ wire, areaMm2 }: NetWire, end: "from" | "to"): Finding[] {
  const barrel = wire.ends?.[end]?.barrel;
  if (barrel === undefined || areaMm2 === null) return [];
  const edit = (fitting: string): Edit => ({
    op: "set-wire",
    id: wire.id,
    change: { ends: { ...wire.ends, [end]: { ...wire.ends?.[end], barrel: fitting } } },
  });
  return misfit([wire.id, wire[end]], barrel, areaMm2, edit);
}

function misfit(at: readonly string[], barrel: string, areaMm2: number, edit: (fitting: string) => Edit): Finding[] {
  if (barrelFits(barrel, areaMm2) !== false) return [];
  const fitting = barrelFor(areaMm2)?.colour;
  const remedies: Remedy[] = fitting
    ? [{ id: "other-barrel", text: `Use a ${fitting} barrel`, edits: [edit(fitting)] }]
    : [{ id: "split", text: "Use a bus bar or a lug for so much copper", edits: [] }];
  return [{ at, measure: { barrel, areaMm2 }, remedies }];
}

/** Rings on one terminal must be for one stud. */
function rings({ netlist }: Study, { address, wires }: NetTerminal): Finding[] {
  if (wires.length < 2) return [];
  const studs = new Set(
    wires.flatMap((index) => {
      const { wire } = netlist.wires[index]!;
      return [
        wire.from === address ? wire.ends?.from?.stud : undefined,
        wire.to === address ? wire.ends?.to?.stud : undefined,
      ];
    }),
  );
  studs.delete(undefined);
  if (studs.size < 2) return [];
  return [
    {
      at: [address, ...wires.map((index) => netlist.wires[index]!.wire.id)],
      measure: { studs: [...studs].join(" and ") },
      remedies: [{ id: "same-stud", text: "Crimp on rings for the stud that is there", edits: [] }],
    },
  ];
}
