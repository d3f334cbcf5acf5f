import type { Solution } from "../circuit/index.ts";
import type { Wire } from "../document/index.ts";
import { ampsThrough, voltsBetween, type SituationReading } from "../readings/index.ts";
import { NewIds } from "./remedies/new-ids.ts";
import { defineRule, type Finding, type Remedy, type Study } from "./rule.ts";
import { partId } from "./study/elements.ts";
import { closedPaths } from "./study/closed-paths.ts";
import { sharedReturns, type Consumer, type SharedReturn } from "./study/shared-returns.ts";
import { amount, listOf, nameOf, situationOf } from "./study/words.ts";
import { settledSituations } from "./study/worst.ts";

/** Volts from which something is taken to glow or click. */
const LEAST_V = 1;
/** Amps below which it only floats. */
const LEAST_A = 1e-3;

export const lostGround = defineRule({
  id: "lost-ground",
  level: "advice",
  about:
    "If one shared return comes off, other loads become the way back: lamps glow and relays click that should not.",
  source: "Practitioners' fault finding; a load counts as worked from 1 V (common practice, no source)",
  check: (study) => groupsOfReturns(study).flatMap((group) => lost(study, group)),
  say(finding, study) {
    const odd = listOf(study, finding.at.slice(Number(finding.measure["wires"])));
    return `If ${nameOf(study, finding.at[0]!)} comes off, ${odd} gets ${amount(finding, "volts", "V")} ${situationOf(finding, study)} as the way back of the others. A second return keeps them apart.`;
  },
});

/** Returns that serve the very same consumers are one place: it does not matter which of them comes off. */
function groupsOfReturns(study: Study): readonly SharedReturn[][] {
  const groups = new Map<string, SharedReturn[]>();
  for (const shared of sharedReturns(study)) {
    const key = shared.serves.map(({ index }) => index).join();
    groups.set(key, [...(groups.get(key) ?? []), shared]);
  }
  return [...groups.values()];
}

interface Odd {
  readonly consumer: Consumer;
  readonly volts: number;
}

function lost(study: Study, group: readonly SharedReturn[]): Finding[] {
  const [{ wire, serves, isBehind }] = group as [SharedReturn];
  // Nothing can come back another way unless the far end of one of them leads to ground by itself: most can't.
  const elsewhere = closedPaths(study.netlist).sneakReturns(isBehind);
  if (!serves.some(({ a, b }) => elsewhere.has(isBehind(a) ? b : a))) return [];
  const found = settledSituations(study).flatMap((situation) => {
    if (!serves.some((consumer) => isDrawing(situation, consumer))) return [];
    const solution = study.solveWithout([wire.index], situation);
    const odd = solution.status === "ok" ? serves.flatMap((one) => oddly(one, situation.solution, solution)) : [];
    return odd.length > 0 ? [{ situation, odd: odd.toSorted((a, b) => b.volts - a.volts) }] : [];
  });
  const [worst] = found.toSorted((one, other) => other.odd[0]!.volts - one.odd[0]!.volts);
  if (!worst) return [];
  const wires = group.map((each) => each.wire.wire.id);
  return [
    {
      at: [...wires, ...new Set(worst.odd.map(({ consumer }) => partId(consumer)))],
      measure: { volts: worst.odd[0]!.volts, wires: wires.length, situation: worst.situation.id },
      remedies: [secondReturn(study, group)],
    },
  ];
}

/** A wire of the same size beside them, from the loads' end to the far end. */
function secondReturn({ netlist }: Study, group: readonly SharedReturn[]): Remedy {
  // The search notes the farthest from the source first.
  const [first] = group as [SharedReturn];
  const last = group.at(-1)!;
  const far = last.wire.from === last.behind ? last.wire.to : last.wire.from;
  const { size } = first.wire.wire;
  const lengths = group.map(({ wire }) => wire.wire.metres ?? Number.NaN);
  const metres = lengths.reduce((sum, each) => sum + each, 0);
  const wire: Wire = {
    id: new NewIds(netlist.document).next("w"),
    from: first.behind.address,
    to: far.address,
    ...(size === undefined ? {} : { size }),
    ...(Number.isNaN(metres) ? {} : { metres: Math.round(metres * 1000) / 1000 }),
  };
  return { id: "second-return", text: "Run a second return beside this one", edits: [{ op: "add-wire", wire }] };
}

function isDrawing({ solution }: SituationReading, consumer: Consumer): boolean {
  return Math.abs(ampsThrough(solution, consumer)) > LEAST_A;
}

/** Worked by the loss: it had no volts before, or now has them the other way round. */
function oddly(consumer: Consumer, before: Solution, after: Solution): Odd[] {
  const volts = voltsBetween(after, consumer.a, consumer.b) ?? 0;
  const was = voltsBetween(before, consumer.a, consumer.b) ?? 0;
  const isNew = Math.abs(was) <= LEAST_V || Math.sign(was) !== Math.sign(volts);
  const isWorked = Math.abs(volts) > LEAST_V && Math.abs(ampsThrough(after, consumer)) > LEAST_A;
  return isNew && isWorked ? [{ consumer, volts: Math.abs(volts) }] : [];
}
