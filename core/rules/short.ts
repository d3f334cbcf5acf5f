import { isClosed, type NetElement, type Netlist } from "../netlist/index.ts";
import { ampsThrough } from "../readings/index.ts";
import { defineRule, type Finding, type Remedy, type Study } from "./rule.ts";
import { partId } from "./study/elements.ts";
import { positionsInWords, samplesOf, simplestOf, type Sample } from "./study/samples.ts";
import { pathsOf, type Step } from "./study/spread.ts";
import { conducts, tiesIn } from "./study/ties.ts";
import { amount, listOf, nameOf, placeName } from "./study/words.ts";

export const short = defineRule({
  id: "short",
  level: "stop",
  about:
    "A source's positive leads straight back to its negative, or sources of different volts are joined with nothing between.",
  source: "Every combination of the controls is looked at",
  check: (study) => [...shorted(study), ...contradictory(study)],
  say(finding, study) {
    const when = String(finding.measure["when"]);
    if (finding.measure["why"] === "contradictory") {
      return `${listOf(study, finding.at)} are joined with nothing between and don't agree on their volts when ${when}: unlimited current flows.`;
    }
    const amps = typeof finding.measure["amps"] === "number" ? `, ${amount(finding, "amps", "A")} flow` : "";
    return `${placeName(finding, study)} is shorted when ${when}${amps}: wires burn until something gives.`;
  },
});

function shorted(study: Study): Finding[] {
  const { netlist } = study;
  return netlist.elements.flatMap((element): Finding[] => {
    if (element.spec.type !== "source" && element.spec.type !== "converter") return [];
    if (!couldBeShorted(netlist, element)) return [];
    const shows = samplesOf(study).filter((sample) => isShorted(study, element, sample));
    const first = simplestOf(shows);
    if (!first) return [];
    const { solution, combination } = first;
    const amps = solution.status === "ok" && element.spec.type === "source" ? ampsThrough(solution, element) : null;
    const wires = wiresInShort(study, element, first);
    return [
      {
        at: [partId(element), ...wires],
        measure: { amps, when: positionsInWords(study, combination) },
        remedies: wires.slice(-1).map((wire) => removeWire(study, wire)),
      },
    ];
  });
}

/** With every contact closed at once; most sources are not, and need no look at each combination. */
function couldBeShorted(netlist: Netlist, element: NetElement): boolean {
  const [start, end] = endsOf(element);
  return pathsOf(netlist).closed.same(start, end);
}

function endsOf({ spec, a, b, outA, outB }: NetElement): readonly [plus: number, minus: number] {
  return spec.type === "converter" ? [outA, outB] : [a, b];
}

function isShorted({ netlist }: Study, element: NetElement, { combination, solution }: Sample): boolean {
  const ties = tiesIn(netlist, combination, solution);
  const [plus, minus] = endsOf(element);
  return isClosed(netlist, element, combination) && ties.classOf(plus) === ties.classOf(minus);
}

/** Wires on the way from the positive to the negative. */
function wiresInShort({ netlist }: Study, element: NetElement, { combination, solution }: Sample): readonly string[] {
  const [start, end] = endsOf(element);
  const { steps } = pathsOf(netlist);
  const cameBy = new Map<number, { readonly node: number; readonly step: Step } | null>([[start, null]]);
  for (const [node] of cameBy) {
    for (const step of steps[node]!) {
      const isShut = step.element === null || conducts(netlist, combination, solution, step.element);
      if (isShut && !cameBy.has(step.to)) cameBy.set(step.to, { node, step });
    }
  }
  const wires: string[] = [];
  for (let at = cameBy.get(end); at; at = cameBy.get(at.node)) if (at.step.wire) wires.unshift(at.step.wire.wire.id);
  return wires;
}

/** Sources that can't both be right: the solve says which. */
function contradictory(study: Study): Finding[] {
  const { netlist } = study;
  const found = new Map<string, Finding>();
  for (const sample of samplesOf(study)) {
    const { status, conflict } = sample.solution;
    if (status !== "contradictory") continue;
    const sources = netlist.elements.filter(
      ({ branch, spec }) => conflict.includes(branch) && (spec.type === "source" || spec.type === "converter"),
    );
    if (sources.some((source) => isShorted(study, source, sample))) continue;
    const at = [...new Set(sources.map(partId))];
    const measure = { why: "contradictory", when: positionsInWords(study, sample.combination) };
    const remedies = [{ id: "apart", text: "Keep them apart, or give each its internal resistance", edits: [] }];
    if (at.length > 0 && !found.has(at.join())) found.set(at.join(), { at, measure, remedies });
  }
  return [...found.values()];
}

function removeWire(study: Study, id: string): Remedy {
  return { id: "remove-wire", text: `Take out ${nameOf(study, id)}`, edits: [{ op: "remove-wire", id }] };
}
