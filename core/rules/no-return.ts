import type { NetPart } from "../netlist/index.ts";
import { factsOf } from "../parts/index.ts";
import { returnTo } from "./remedies/return-to.ts";
import { defineRule, type Finding, type Study } from "./rule.ts";
import { addressOf, consumersOf, partId } from "./study/elements.ts";
import type { Consumer } from "./study/shared-returns.ts";
import { closedPaths } from "./study/closed-paths.ts";
import { listOf, nameOf, placeName } from "./study/words.ts";

export const noReturn = defineRule({
  id: "no-return",
  level: "fix",
  about:
    "A load that is fed has no way back to the source, or only one through paint, which holds today and not next month.",
  source: "A battery-box maker's bulletin: ground screws in painted steel failed within 1 to 6 months",
  check: (study) => [...withoutReturn(study), ...study.netlist.parts.flatMap((part) => throughPaint(study, part))],
  say(finding, study) {
    const { surface } = finding.measure;
    if (surface === "painted") {
      return `The ground at ${nameOf(study, finding.at[0]!)} goes through paint: it works today and not next month.`;
    }
    if (surface === "unknown") {
      return `Whether the metal at ${nameOf(study, finding.at[0]!)} is clean or painted is not known: look, clean it, and enter the answer.`;
    }
    return `${placeName(finding, study)} has no way back to the source from ${listOf(study, finding.at.slice(1))}: it can't work, or only through something else.`;
  },
});

function withoutReturn(study: Study): Finding[] {
  const { isFed, isRing } = closedPaths(study.netlist);
  return consumersOf(study.netlist)
    .filter(({ spec }) => spec.type !== "load" || spec.role === "use")
    .filter(({ a, b }) => !isRing(a, b) && (isFed(a) || isFed(b)))
    .map((consumer) => {
      const end = missingEnd(study, consumer, isFed);
      return { at: [partId(consumer), end], measure: {}, remedies: returnTo(study, end) };
    });
}

/** The end that should lead back: the one with no wire, else the one that is not fed. */
function missingEnd({ netlist }: Study, consumer: Consumer, isFed: (node: number) => boolean): string {
  const ends = endNames(consumer).map((name) => addressOf(consumer, name));
  const unwired = ends.find((address) => netlist.terminalAt.get(address)?.wires.length === 0);
  return unwired ?? ends[isFed(consumer.a) ? 1 : 0]!;
}

function endNames({ spec }: Consumer): readonly [string, string] {
  return spec.type === "converter" ? [spec.inPlus, spec.inMinus] : [spec.a, spec.b];
}

/** A ground point in painted metal that something comes back through. */
function throughPaint({ netlist }: Study, part: NetPart): Finding[] {
  const { surface } = factsOf(part.part);
  const wires = part.terminals.flatMap((terminal) => terminal.wires);
  if (surface === undefined || surface === "clean" || wires.length === 0) return [];
  return [
    {
      ...(surface === "unknown" ? { level: "cant-check" } : {}),
      at: [part.part.id, ...wires.map((index) => netlist.wires[index]!.wire.id)],
      measure: { surface },
      remedies: [
        {
          id: "clean-metal",
          text: "Clean it to bare metal under the ring and seal it after",
          edits: [{ op: "set-props", id: part.part.id, change: { surface: "clean" } }],
        },
      ],
    },
  ];
}
