import type { NetPart, NetTerminal } from "../netlist/index.ts";
import { changedTo, factsOf, type PlugFacts } from "../parts/index.ts";
import { defineRule, type Finding, type Remedy, type Study } from "./rule.ts";
import { hasCoilNear, isHotWithout } from "./study/live.ts";
import { amount, listOf, nameOf } from "./study/words.ts";

export const livePins = defineRule({
  id: "live-pins",
  level: "fix",
  about: "Unplugged, a half with pins stays live with everything at rest; sockets belong on the fed half.",
  source: "A city's vehicle specification (live half female); each half is looked at with the other unplugged",
  check: (study) =>
    study.netlist.parts.flatMap((part) => {
      const { plug } = factsOf(part.part);
      return plug ? pinsOf(study, part, plug) : [];
    }),
  say(finding, study) {
    const pins = listOf(study, finding.at.slice(1));
    return finding.level
      ? `Unplugged, ${pins} stays live; enter which half of ${nameOf(study, finding.at[0]!)} has the pins.`
      : `Unplugged, ${pins} stays ${amount(finding, "volts", "V")} live with everything at rest: these are pins, and can touch metal.`;
  },
});

/** The fed half is the one that stays live; of two such (a battery on either side) the first as drawn. The other half has the other sort. */
function pinsOf(study: Study, part: NetPart, { fedSide, pairs }: PlugFacts): Finding[] {
  const halves = [0, 1].map((half) =>
    pairs.map((pair) => study.netlist.terminalAt.get(`${part.part.id}.${pair[half]}`)!),
  );
  const live = [0, 1].map((half) => liveWithout(study, halves[half]!, halves[1 - half]!));
  const fed = live[0]!.length > 0 ? 0 : 1;
  const withPins = fedSide === null ? [0, 1] : [fedSide === "pins" ? fed : 1 - fed];
  return withPins.flatMap((half): Finding[] => {
    const pins = live[half]!;
    const [first] = pins;
    if (!first) return [];
    return [
      {
        ...(fedSide === null ? { level: "cant-check" } : {}),
        at: [part.part.id, ...pins.map(({ terminal }) => terminal.address)],
        measure: { volts: first.volts },
        remedies: half === fed ? [socketsOnFedHalf(part)] : [capThem(pins.map(({ terminal }) => terminal))],
      },
    ];
  });
}

interface Live {
  readonly terminal: NetTerminal;
  readonly volts: number | null;
}

/** Contacts of one half that are hot at rest while the other half, with all its wires, is away. A cap somebody fitted counts. */
function liveWithout(study: Study, half: readonly NetTerminal[], away: readonly NetTerminal[]): readonly Live[] {
  const rest = study.situations[0]!;
  const cut = away.flatMap(({ wires }) => wires);
  // Relays move only where one of their coils is near; else contacts stand as they did.
  const isFelt = hasCoilNear(
    study.netlist,
    [...half, ...away].map(({ node }) => node),
  );
  const solution = isFelt ? study.solveWithout(cut, rest) : rest.solution;
  if (solution.status !== "ok") return [];
  const isHot = isHotWithout(study.netlist, rest.combination, solution, new Set(cut));
  const live = half.filter(
    ({ node, part, terminal }) => isHot(node) && part.part.covers?.[terminal.name] !== "covered",
  );
  if (live.length === 0) return [];
  const { known, nodeV } = isFelt ? solution : study.solveWithout(cut, rest);
  return live.map((terminal) => ({ terminal, volts: known[terminal.node] === 1 ? nodeV[terminal.node]! : null }));
}

function socketsOnFedHalf(part: NetPart): Remedy {
  const edits = [{ op: "set-props" as const, id: part.part.id, change: changedTo.socketsOnFedHalf }];
  return { id: "sockets-on-fed-half", text: "Put the sockets on the fed half", edits };
}

function capThem(pins: readonly NetTerminal[]): Remedy {
  const edits = pins.map(({ address }) => ({ op: "set-cover" as const, terminal: address, cover: "covered" as const }));
  return { id: "cover-terminal", text: "Fit a cap that covers the pins when it is unplugged", edits };
}
