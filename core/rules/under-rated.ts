import type { NetElement, NetPart, NetTerminal } from "../netlist/index.ts";
import { factsOf } from "../parts/index.ts";
import type { Guard } from "../positions/index.ts";
import { betterPart } from "./remedies/better-part.ts";
import { smallerDevice } from "./remedies/rerate-device.ts";
import { formatQuantity } from "../units/index.ts";
import { defineRule, type Finding, type Remedy, type Study } from "./rule.ts";
import { addressOf, partId } from "./study/elements.ts";
import { isOver } from "./study/limits.ts";
import { amount, nameOf, placeName } from "./study/words.ts";
import { worstOf } from "./study/worst.ts";
import { ampsThrough } from "../readings/index.ts";

export const underRated = defineRule({
  id: "under-rated",
  level: "fix",
  about:
    "A holder, plug, block, switch or bar is rated below the fuse that protects it, so it can melt before the fuse blows.",
  source: "The part's own rating against its fuse's; common practice, no source",
  check: (study) =>
    study.netlist.parts.flatMap((part) => [...holders(study, part), ...bodies(study, part), ...diodes(study, part)]),
  say(finding, study) {
    const place = placeName(finding, study);
    const rated = amount(finding, "ratedA", "A");
    if (finding.measure["amps"] !== undefined) {
      return `${place} carries ${amount(finding, "amps", "A")}, more than the ${rated} it is made for.`;
    }
    const what = finding.measure["of"] === "holder" ? `The holder of ${nameOf(study, finding.at[0]!)}` : place;
    return `${what} stands ${rated}, but its fuse lets ${amount(finding, "guardA", "A")} through: it can melt before the fuse blows.`;
  },
});

/** A fuse in a holder that stands less than the fuse. */
function holders(study: Study, part: NetPart): Finding[] {
  return part.elements.flatMap(({ spec }): Finding[] => {
    if (spec.type !== "protection" || spec.holderA === null || spec.ratingA === null) return [];
    if (!isOver(spec.ratingA, spec.holderA)) return [];
    const id = part.part.id;
    const better: Remedy = {
      id: "better-holder",
      text: `Fit a holder for ${formatQuantity(spec.ratingA, "A")} or more`,
      edits: [{ op: "set-props", id, change: { holderA: spec.ratingA } }],
    };
    const measure = { of: "holder", ratedA: spec.holderA, guardA: spec.ratingA };
    return [{ at: [id], measure, remedies: [better, ...smallerDevice(study, id, spec.holderA)] }];
  });
}

/** A plug, block, switch or bar behind a fuse that lets more through than its body stands. */
function bodies(study: Study, part: NetPart): Finding[] {
  const { ratedA, returnBar } = factsOf(part.part);
  if (ratedA == null || returnBar) return [];
  const worst = guardsOn(study, fedTerminals(part))
    .filter(({ guard }) => guard.ratingA !== null && isOver(guard.ratingA, ratedA))
    .sort((one, other) => other.guard.ratingA! - one.guard.ratingA!);
  const [first] = worst;
  if (!first) return [];
  const id = part.part.id;
  return [
    {
      at: [id, ...new Set(worst.map(({ address }) => address)), first.guard.at],
      measure: { of: "body", ratedA, guardA: first.guard.ratingA },
      remedies: [...betterPart(study, part, first.guard.ratingA!), ...smallerDevice(study, first.guard.at, ratedA)],
    },
  ];
}

/** Terminals ahead of the part's own devices: the feed of a block, every terminal of anything else. */
function fedTerminals(part: NetPart): readonly NetTerminal[] {
  const behind = new Set(part.elements.flatMap(({ spec, b }) => (spec.type === "protection" ? [b] : [])));
  return part.terminals.filter(({ node }) => !behind.has(node));
}

function guardsOn(study: Study, terminals: readonly NetTerminal[]): { address: string; guard: Guard }[] {
  return terminals.flatMap(({ address, wires }) =>
    wires.flatMap((index) => {
      const { guard } = study.standing.wires[index]!;
      return guard ? [{ address, guard }] : [];
    }),
  );
}

function diodes(study: Study, part: NetPart): Finding[] {
  return part.elements.flatMap((element: NetElement): Finding[] => {
    const { spec } = element;
    if (spec.type !== "diode" || spec.ratedA === null) return [];
    const worst = worstOf(study, ({ solution }) => Math.abs(ampsThrough(solution, element)));
    if (!worst || !isOver(worst.value, spec.ratedA)) return [];
    const better: Remedy = {
      id: "better-part",
      text: `Fit a diode rated ${formatQuantity(Math.ceil(worst.value * 1.25), "A")} or more`,
      edits: [{ op: "set-props", id: partId(element), change: { ratedA: Math.ceil(worst.value * 1.25) } }],
    };
    const measure = { of: "diode", ratedA: spec.ratedA, amps: worst.value, situation: worst.situation.id };
    return [{ at: [partId(element), addressOf(element, spec.a)], measure, remedies: [better] }];
  });
}
