import type { Edit } from "../document/index.ts";
import type { NetTerminal } from "../netlist/index.ts";
import { fitted } from "../parts/index.ts";
import { NewIds } from "./remedies/new-ids.ts";
import { defineRule, type Finding, type Remedy, type Study } from "./rule.ts";
import { nameOf } from "./study/words.ts";

/** Most rings by what they are put on; other fixings take what their terminals take. */
const MOST_RINGS: Readonly<Record<string, number>> = { stud: 4, "ground-screw": 2 };

export const studCrowded = defineRule({
  id: "stud-crowded",
  level: "fix",
  about: "More than four rings on a stud, or two on a ground screw: it works loose.",
  source: "Boat surveyors' four-lug rule; a van maker's guide: two eyelets on a ground screw at most",
  check: (study) => study.netlist.terminals.flatMap((terminal) => crowded(study, terminal)),
  say: (finding, study) =>
    `${finding.measure["rings"]} rings are on ${nameOf(study, finding.at[0]!)}, which takes ${finding.measure["mostRings"]}: it will work loose.`,
});

function crowded(study: Study, terminal: NetTerminal): Finding[] {
  const most = MOST_RINGS[terminal.terminal.fixing];
  const { netlist } = study;
  const rings = terminal.wires
    .map((index) => netlist.wires[index]!.wire)
    .filter((wire) => {
      const end = wire.ends?.[wire.from === terminal.address ? "from" : "to"];
      return end?.terminal === undefined || end.terminal === "ring";
    });
  if (most === undefined || rings.length <= most) return [];
  const isGround = terminal.terminal.fixing === "ground-screw";
  return [
    {
      at: [terminal.address, ...rings.map(({ id }) => id)],
      measure: { rings: rings.length, mostRings: most },
      remedies: isGround
        ? [
            furtherScrews(
              study,
              terminal,
              rings.slice(most).map(({ id }) => id),
              most,
            ),
          ]
        : [{ id: "own-bar", text: "Take some of them to a bus bar of their own", edits: [] }],
    },
  ];
}

/** The rings too many go to further ground points beside this one. */
function furtherScrews({ netlist }: Study, screw: NetTerminal, spare: readonly string[], most: number): Remedy {
  const { address, part, terminal } = screw;
  const ids = new NewIds(netlist.document);
  const edits: Edit[] = [];
  for (let first = 0; first < spare.length; first += most) {
    const id = ids.next(part.kind.letter);
    const place = part.part.at;
    const at = place ? { at: [place[0] + 3 * (first / most + 1), place[1]] as const } : {};
    edits.push({ op: "add-part", part: { id, kind: fitted.chassis.kind, ...at } });
    for (const wire of spare.slice(first, first + most)) {
      const end = netlist.wireAt.get(wire)!.wire.from === address ? "from" : "to";
      edits.push({ op: "set-wire", id: wire, change: { [end]: `${id}.${terminal.name}`, via: undefined } });
    }
  }
  return { id: "further-screws", text: "Put the rings too many on a ground screw of their own", edits };
}
