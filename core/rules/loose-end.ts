import type { NetTerminal, NetWire } from "../netlist/index.ts";
import { defineRule, type Finding } from "./rule.ts";
import { amount, nameOf, placeName } from "./study/words.ts";

export const looseEnd = defineRule({
  id: "loose-end",
  level: "advice",
  about: "A wire leads to something that leads nowhere: a clipped end or a joint with nothing else on it.",
  source: "Fleet specifications: loose ends sealed",
  check: ({ netlist, standing }) =>
    netlist.wires.flatMap((wire): Finding[] =>
      [wire.from, wire.to]
        .filter((end) => isDead(end, wire))
        .map((end) => {
          const { hot, faultA } = standing.terminals[end.index]!;
          return {
            ...(hot === "never" ? {} : { level: "fix" }),
            at: [end.address, wire.wire.id],
            measure: { hot, faultA },
            remedies: [
              { id: "remove-wire", text: "Take the wire out", edits: [{ op: "remove-wire", id: wire.wire.id }] },
            ],
          };
        }),
    ),
  say(finding, study) {
    const end = `${placeName(finding, study, 1)} ends at ${nameOf(study, finding.at[0]!)}, which leads nowhere`;
    if (!finding.level) return `${end}: connect it, or take it out.`;
    const fault =
      typeof finding.measure["faultA"] === "number"
        ? ` (${amount(finding, "faultA", "A")} if it touches the frame)`
        : "";
    return `${end}, and it can be live${fault}: connect it, seal its end, or take it out.`;
  },
});

/** Nothing goes on from here: no other wire on this metal, and no wire behind any element that starts from it. */
function isDead({ part, node, terminal }: NetTerminal, wire: NetWire): boolean {
  const here = part.terminals.filter((other) => other.node === node);
  if (here.some(({ wires }) => wires.some((index) => index !== wire.index)) || wire.from.node === wire.to.node)
    return false;
  // A half of a plug may wait for its other half.
  if (terminal.fixing === "contact") return false;
  const leading = part.elements.filter(
    ({ spec, a, b, outA, outB }) => spec.type !== "bar" && [a, b, outA, outB].includes(node),
  );
  return !leading.some(({ spec, a, b }) => {
    if (spec.type === "source" || spec.type === "converter") return true;
    const other = part.terminals.filter((each) => each.node === (a === node ? b : a));
    // A load or coil without its return is no-return's affair; the far end of an inner element is not a place for a wire.
    return (
      other.length === 0 ||
      other.some(({ wires }) => wires.length > 0) ||
      (spec.type === "load" && a === node) ||
      spec.type === "coil"
    );
  });
}
