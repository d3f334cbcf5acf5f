import type { NetTerminal } from "../netlist/index.ts";
import { changedTo } from "../parts/index.ts";
import { defineRule, type Finding, type Remedy, type Study } from "./rule.ts";
import { amount, listOf, nameOf } from "./study/words.ts";

export const hotBare = defineRule({
  id: "hot-bare",
  level: "stop",
  about: "Bare metal that is live with everything switched off; whatever touches it and the frame sparks.",
  source:
    "Fleet and body-builder rules: no exposed live terminals (a city's vehicle specification, makers' builder guides)",
  check: (study) => piecesOfMetal(study).map((piece) => finding(study, piece)),
  say(finding, study) {
    const places =
      finding.at.length > 1
        ? `${listOf(study, finding.at)} are bare and`
        : `${nameOf(study, finding.at[0]!)} is bare and`;
    const volts = `${amount(finding, "volts", "V")} live with everything switched off`;
    const sentence = finding.level
      ? `${places} ${volts}, through a load: a meter shows it, and a test lamp may glow.`
      : `${places} ${volts}. Anything it touches will spark.`;
    return sentence.charAt(0).toUpperCase() + sentence.slice(1);
  },
});

/** Posts of one bar are one place; two studs with a fuse between are two. */
function piecesOfMetal({ netlist, standing }: Study): NetTerminal[][] {
  const pieces = new Map<string, NetTerminal[]>();
  for (const terminal of netlist.terminals) {
    const { atRest, bare } = standing.terminals[terminal.index]!;
    if (atRest === null || !bare) continue;
    const piece = `${terminal.part.index} ${terminal.node}`;
    pieces.set(piece, [...(pieces.get(piece) ?? []), terminal]);
  }
  return [...pieces.values()];
}

function finding(study: Study, piece: readonly NetTerminal[]): Finding {
  const [first] = piece;
  const { atRest } = study.standing.terminals[first!.index]!;
  return {
    ...(atRest === "load" ? { level: "fix" } : {}),
    at: piece.map(({ address }) => address),
    measure: { volts: study.situations[0]!.terminals[first!.address]!.volts },
    remedies: [...relayWithoutIt(first!), coverIt(study, piece)],
  };
}

/** A contact that is closed at rest and leads to nothing: a relay that has none does the same job. */
function relayWithoutIt({ part, terminal, wires }: NetTerminal): readonly Remedy[] {
  const isRestContact = part.elements.some(
    ({ spec }) =>
      spec.type === "contact" &&
      spec.b === terminal.name &&
      "coil" in spec.movedBy &&
      spec.movedBy.closedWhen === "released",
  );
  if (!isRestContact || wires.length > 0 || !("contact" in part.settings)) return [];
  return [
    {
      id: "fit-4-pin-relay",
      text: `Fit a 4-pin relay, which has no ${terminal.name}`,
      edits: [
        { op: "set-props", id: part.part.id, change: changedTo.withoutRestContact },
        ...(part.part.covers?.[terminal.name] === undefined
          ? []
          : [{ op: "set-cover" as const, terminal: `${part.part.id}.${terminal.name}`, cover: undefined }]),
      ],
    },
  ];
}

function coverIt(study: Study, piece: readonly NetTerminal[]): Remedy {
  return {
    id: "cover-terminal",
    text: `Put a boot, cap or cover over ${listOf(
      study,
      piece.map(({ address }) => address),
    )}`,
    edits: piece.map(({ address }) => ({ op: "set-cover", terminal: address, cover: "covered" })),
  };
}
