import type { Edit } from "../document/index.ts";
import { changedTo } from "../parts/index.ts";
import { switchInFeed } from "./remedies/switch-in-feed.ts";
import { meantToStayOn } from "./remedies/meant-to-stay-on.ts";
import { defineRule, type Finding, type Remedy, type Study } from "./rule.ts";
import { usesCutBy } from "./study/cut-by.ts";
import { addressOf, elementsOf, partId, usesOf, type ElementOf } from "./study/elements.ts";
import { amount, placeName } from "./study/words.ts";

export const onAtRest = defineRule({
  id: "on-at-rest",
  level: "fix",
  about: "A load that is meant to be off works with everything at rest; often it hangs on 87a instead of 87.",
  source: "The load's own setting; common practice",
  check(study) {
    const rest = study.situations[0]!;
    return usesOf(study.netlist)
      .filter((use) => use.spec.mustBeOffAtRest && rest.parts[partId(use)]!.on === true)
      .map((use): Finding => {
        const { amps = null, watts = null } = rest.parts[partId(use)]!;
        return { at: [partId(use)], measure: { amps, watts, situation: rest.id }, remedies: remediesFor(study, use) };
      });
  },
  say: (finding, study) =>
    `${placeName(finding, study)} is on with everything switched off, drawing ${amount(finding, "amps", "A")}: it should be off.`,
});

function remediesFor(study: Study, use: ElementOf<"load">): readonly Remedy[] {
  return [
    ...moveToWorkingContact(study, use),
    ...switchInFeed(study, addressOf(use, use.spec.a)),
    ...meantToStayOn(use),
  ];
}

/** Its wires go from the contact that is closed at rest to the one that closes when the relay pulls in. */
function moveToWorkingContact(study: Study, use: ElementOf<"load">): readonly Remedy[] {
  const contacts = elementsOf(study.netlist, "contact");
  const isMoved = ({ spec }: ElementOf<"contact">, closedWhen: string) =>
    "coil" in spec.movedBy && spec.movedBy.closedWhen === closedWhen;
  return contacts
    .filter((contact) => isMoved(contact, "released") && usesCutBy(study, study.situations[0]!, contact).includes(use))
    .flatMap((contact): Remedy[] => {
      const working = contacts.find(
        (other) => other.coil === contact.coil && other.a === contact.a && isMoved(other, "pulled-in"),
      );
      if (!working) return [];
      const from = addressOf(contact, contact.spec.b);
      const to = addressOf(working, working.spec.b);
      return [
        {
          id: "move-to-87",
          text: `Move the wire from ${contact.spec.b} to ${working.spec.b}, of a relay that has no ${contact.spec.b}`,
          edits: [...moveWires(study, from, to), ...withoutRestContact(contact)],
        },
      ];
    });
}

/** Left bare, the old contact would be live at rest. */
function withoutRestContact({ part, spec }: ElementOf<"contact">): readonly Edit[] {
  if (!("contact" in part.settings))
    return [{ op: "set-cover", terminal: `${part.part.id}.${spec.b}`, cover: "covered" }];
  const change: Edit = { op: "set-props", id: part.part.id, change: changedTo.withoutRestContact };
  if (part.part.covers?.[spec.b] === undefined) return [change];
  return [change, { op: "set-cover", terminal: `${part.part.id}.${spec.b}`, cover: undefined }];
}

function moveWires({ netlist }: Study, from: string, to: string): Edit[] {
  return (netlist.terminalAt.get(from)?.wires ?? []).map((index) => {
    const { wire } = netlist.wires[index]!;
    const change = { ...(wire.from === from ? { from: to } : {}), ...(wire.to === from ? { to } : {}), via: undefined };
    return { op: "set-wire", id: wire.id, change };
  });
}
