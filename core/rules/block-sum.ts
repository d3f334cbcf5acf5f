import type { Solution } from "../circuit/index.ts";
import type { NetPart } from "../netlist/index.ts";
import { factsOf } from "../parts/index.ts";
import { ampsThrough } from "../readings/index.ts";
import { betterPart } from "./remedies/better-part.ts";
import { defineRule, type Finding, type Study } from "./rule.ts";
import { elementsIn } from "./study/elements.ts";
import { isOver } from "./study/limits.ts";
import { amount, nameOf, placeName, situationOf } from "./study/words.ts";
import { worstOf } from "./study/worst.ts";

export const blockSum = defineRule({
  id: "block-sum",
  level: "fix",
  about: "All that a fuse block or a bar feeds at once is more than it, its fuse or its feed wire stands.",
  source: "The parts' own ratings, and the capacity table named in the report",
  check: (study) => study.netlist.parts.flatMap((part) => overfull(study, part)),
  say(finding, study) {
    const place = placeName(finding, study);
    const limit = String(finding.measure["of"]);
    const what = limit === finding.at[0] ? "it" : nameOf(study, limit);
    return `${place} passes ${amount(finding, "sumA", "A")} in all ${situationOf(finding, study)}, but ${what} stands ${amount(finding, "limitA", "A")}: all on together is too much for it.`;
  },
});

/** A place that the whole sum goes through. */
interface Limit {
  readonly of: string;
  readonly limitA: number;
}

function overfull(study: Study, part: NetPart): Finding[] {
  const shares = sharesOf(study, part);
  const worst = worstOf(study, ({ solution }) => shares.reduce((sum, share) => sum + share(solution), 0));
  if (shares.length < 2 || !worst) return [];
  const over = limitsOn(study, part).filter(({ limitA }) => isOver(worst.value, limitA));
  const [first] = over.toSorted((one, other) => one.limitA - other.limitA);
  if (!first) return [];
  return [
    {
      at: [part.part.id, ...over.map(({ of }) => of).filter((of) => of !== part.part.id)],
      measure: { sumA: worst.value, limitA: first.limitA, of: first.of, situation: worst.situation.id },
      remedies: [
        ...(first.of === part.part.id ? betterPart(study, part, worst.value) : []),
        { id: "split", text: "Split it over two feeds", edits: [] },
      ],
    },
  ];
}

type Share = (solution: Solution) => number;

/** What each way of a block or each wire of a feed bar takes away, amps; none for every other part. */
function sharesOf({ netlist }: Study, part: NetPart): readonly Share[] {
  const ways = elementsIn(part, "protection");
  if (ways.length > 1) return ways.map((way) => (solution) => Math.abs(ampsThrough(solution, way)));
  const { ratedA, returnBar } = factsOf(part.part);
  if (elementsIn(part, "bar").length === 0 || ratedA === undefined || returnBar) return [];
  return part.terminals.flatMap(({ wires, address }) =>
    wires.map((index): Share => {
      const { branch, wire } = netlist.wires[index]!;
      return (solution) => Math.max((wire.from === address ? 1 : -1) * solution.branchA[branch]!, 0);
    }),
  );
}

/** The part itself, and of a block also its feed wire and the device ahead of it, which carry nothing else. */
function limitsOn({ netlist, standing }: Study, part: NetPart): readonly Limit[] {
  const { ratedA } = factsOf(part.part);
  const own: Limit[] = ratedA == null ? [] : [{ of: part.part.id, limitA: ratedA }];
  const [way] = elementsIn(part, "protection");
  const feed = way && part.terminals.find(({ node }) => node === way.a);
  const [only, ...others] = feed?.wires ?? [];
  if (only === undefined || others.length > 0) return own;
  const { wire, capacityA } = netlist.wires[only]!;
  const { guard } = standing.wires[only]!;
  return [
    ...own,
    ...(capacityA === null ? [] : [{ of: wire.id, limitA: capacityA }]),
    ...(guard?.ratingA ? [{ of: guard.at, limitA: guard.ratingA }] : []),
  ];
}
