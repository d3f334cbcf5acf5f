import { defineRule, type Finding, type Study } from "./rule.ts";
import { addressOf, elementsOf, partId, type ElementOf } from "./study/elements.ts";
import { positionsInWords, samplesOf, simplestOf } from "./study/samples.ts";
import { pathsOf, spreadFrom } from "./study/spread.ts";
import { placeName } from "./study/words.ts";

export const relayChatter = defineRule({
  id: "relay-chatter",
  level: "stop",
  about: "Relays that undo their own feed find no state to rest in: they buzz and burn their contacts.",
  source: "Solved from all released; a state seen before means that none settles",
  check(study) {
    const simplest = simplestOf(samplesOf(study).filter(({ solution }) => solution.status === "chatter"));
    if (!simplest) return [];
    const when = positionsInWords(study, simplest.combination);
    return buzzing(study).map((coil): Finding => ({
      at: [partId(coil), addressOf(coil, coil.spec.b), addressOf(coil, coil.spec.a)],
      measure: { when },
      remedies: [
        {
          id: "other-feed",
          text: "Feed its coil from ahead of the contact that it, or the relay it works with, opens",
          edits: [],
        },
      ],
    }));
  },
  say: (finding, study) =>
    `${placeName(finding, study)} buzzes without end when ${finding.measure["when"]}: by pulling in, it takes away what pulls it in.`,
});

/** Whose feed a contact of which relay stands in. */
interface Dependence {
  readonly on: number;
  /** The contact opens when that relay pulls in. */
  readonly undoes: boolean;
}

/** Relays in a ring of dependence that undoes itself; where the drawing shows none (volts sag), all of them. */
function buzzing({ netlist }: Study): readonly ElementOf<"coil">[] {
  const coils = elementsOf(netlist, "coil");
  const dependences = new Map(coils.map((coil) => [coil.index, dependencesOf(netlist, coil)]));
  const inRing = coils.filter(({ index }) => undoesItself(dependences, index));
  return inRing.length > 0 ? inRing : coils;
}

function dependencesOf(netlist: Study["netlist"], coil: ElementOf<"coil">): readonly Dependence[] {
  const { fixed, plus, minus } = pathsOf(netlist);
  const movable = [coil.a, coil.b].filter((node) => {
    const one = fixed.find(node);
    return plus[one] === 0 && minus[one] === 0;
  });
  const region = new Set(movable.flatMap((node) => [...spreadFrom(netlist, node)]));
  return elementsOf(netlist, "contact")
    .filter(({ coil: mover, a, b }) => mover >= 0 && (region.has(a) || region.has(b)))
    .map(({ coil: on, spec }) => ({
      on,
      undoes: "coil" in spec.movedBy && spec.movedBy.closedWhen === "released",
    }));
}

function undoesItself(dependences: ReadonlyMap<number, readonly Dependence[]>, start: number): boolean {
  const seen = new Set<string>();
  const open = [{ coil: start, undone: false }];
  for (const { coil, undone } of open) {
    for (const { on, undoes } of dependences.get(coil) ?? []) {
      const state = { coil: on, undone: undone || undoes };
      if (on === start && state.undone) return true;
      const key = `${on} ${state.undone}`;
      if (!seen.has(key)) open.push(state);
      seen.add(key);
    }
  }
  return false;
}
