import type { NetTerminal, NetWire } from "../netlist/index.ts";
import { factsOf, fitted } from "../parts/index.ts";
import { NewIds } from "./remedies/new-ids.ts";
import { defineRule, type Finding, type Remedy, type Study } from "./rule.ts";
import { elementsIn, elementsOf } from "./study/elements.ts";
import { placeName, nameOf } from "./study/words.ts";

export const sensorBypassed = defineRule({
  id: "sensor-bypassed",
  level: "fix",
  about: "A return lands on the battery's negative post past its sensor, so that the vehicle can't see this load.",
  source: "A car maker's bulletin on battery sensors; a truck maker's guide (returns to the chassis side)",
  check: (study) =>
    study.netlist.parts.flatMap((part) => {
      if (!factsOf(part.part).battery?.sensor) return [];
      return elementsIn(part, "source").flatMap(({ spec }) => {
        const post = study.netlist.terminalAt.get(`${part.part.id}.${spec.minus}`)!;
        const hasStrap = elementsIn(part, "link").some((link) => link.spec.bond !== undefined);
        return post.wires
          .map((index) => study.netlist.wires[index]!)
          .filter((wire) => isReturn(study, wire, post, hasStrap))
          .map((wire): Finding => ({
            at: [wire.wire.id, post.address],
            measure: {},
            remedies: [toChassis(study, wire, post)],
          }));
      });
    }),
  say: (finding, study) =>
    `${placeName(finding, study)} lands on ${nameOf(study, finding.at[1]!)}, past the battery sensor: the vehicle can no longer see this load.`,
});

/** Not a link to another battery, nor the vehicle's own strap where that is drawn as a wire. */
function isReturn({ netlist }: Study, wire: NetWire, post: NetTerminal, hasStrap: boolean): boolean {
  const other = wire.from === post ? wire.to : wire.from;
  const isBattery = elementsOf(netlist, "source").some(
    ({ spec, part }) => spec.zero && [spec.plus, spec.minus].some((end) => `${part.part.id}.${end}` === other.address),
  );
  const isStrap = !hasStrap && factsOf(other.part.part).surface !== undefined;
  return !isBattery && !isStrap;
}

function toChassis({ netlist }: Study, { wire }: NetWire, post: NetTerminal): Remedy {
  const id = new NewIds(netlist.document).next(fitted.chassis.letter);
  const place = post.part.part.at;
  const end = wire.from === post.address ? "from" : "to";
  return {
    id: "to-chassis",
    text: "Take it to a ground point on the chassis",
    edits: [
      {
        op: "add-part",
        part: { id, kind: fitted.chassis.kind, ...(place ? { at: [place[0] + 4, place[1] + 4] } : {}) },
      },
      {
        op: "set-wire",
        id: wire.id,
        change: { [end]: `${id}.${fitted.chassis.terminals({})[0]!.name}`, via: undefined },
      },
    ],
  };
}
