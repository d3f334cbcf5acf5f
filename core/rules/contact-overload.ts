import { ampsThrough } from "../readings/index.ts";
import { largestGuardA } from "./remedies/better-part.ts";
import { formatQuantity } from "../units/index.ts";
import { defineRule, type Finding, type Remedy, type Study } from "./rule.ts";
import { addressOf, elementsOf, partId, type ElementOf } from "./study/elements.ts";
import { isOver } from "./study/limits.ts";
import { startsOf, type Start } from "./study/starts.ts";
import { amount, nameOf, placeName, situationOf } from "./study/words.ts";
import { worstOf } from "./study/worst.ts";

export const contactOverload = defineRule({
  id: "contact-overload",
  level: "fix",
  about: "A contact of a switch or relay carries more than its rating, the moment a motor starts included.",
  source: "The contact's own rating; that of 87a is lower than that of 87 (relay makers' data sheets)",
  check(study) {
    const starts = startsOf(study);
    return elementsOf(study.netlist, "contact").flatMap((contact) => overloaded(study, starts, contact));
  },
  say(finding, study) {
    const { starting } = finding.measure;
    const when = typeof starting === "string" ? ` while ${nameOf(study, starting)} starts` : "";
    const place = placeName(finding, study, 1);
    return `${place} carries ${amount(finding, "amps", "A")} ${situationOf(finding, study)}${when}, over its ${amount(finding, "ratedA", "A")}: the contact may weld and leave it on.`;
  },
});

interface Load {
  readonly amps: number;
  readonly situation: string;
  readonly starting: string | null;
}

function overloaded(study: Study, starts: readonly Start[], contact: ElementOf<"contact">): Finding[] {
  const { ratedA } = contact.spec;
  if (ratedA === null) return [];
  const running = worstOf(study, ({ solution }) => Math.abs(ampsThrough(solution, contact)));
  const loads = [
    ...(running ? [{ amps: running.value, situation: running.situation.id, starting: null }] : []),
    ...starts.map(({ use, situation, solution }): Load => ({
      amps: Math.abs(ampsThrough(solution, contact)),
      situation: situation.id,
      starting: partId(use),
    })),
  ].filter(({ amps }) => isOver(amps, ratedA));
  const [first] = loads;
  if (!first) return [];
  const worst = loads.reduce((one, other) => (isOver(other.amps, one.amps) ? other : one), first);
  return [
    {
      at: [partId(contact), addressOf(contact, contact.spec.b)],
      measure: { amps: worst.amps, ratedA, situation: worst.situation, starting: worst.starting },
      remedies: betterContact(study, contact, worst.amps),
    },
  ];
}

/** Rated for what runs and for the fuse ahead, so that it need not be changed twice. */
function betterContact(study: Study, { part, spec }: ElementOf<"contact">, amps: number): readonly Remedy[] {
  const ratedA = Math.max(Math.ceil(amps), largestGuardA(study, part));
  const change = part.kind.rerate?.(part.settings, spec.b, ratedA);
  if (!change) return [];
  const text = `Fit one whose contact is rated ${formatQuantity(ratedA, "A")} or more`;
  return [{ id: "better-contact", text, edits: [{ op: "set-props", id: part.part.id, change }] }];
}
