import type { Edit } from "../document/index.ts";
import type { NetWire } from "../netlist/index.ts";
import { fuseDistanceM } from "../reference/index.ts";
import { formatLength } from "../units/index.ts";
import type { Way } from "../positions/index.ts";
import { defineRule, type Finding, type Remedy, type Study } from "./rule.ts";
import { isOver } from "./study/limits.ts";
import { routeTo } from "./study/route.ts";
import { nameOf, placeName } from "./study/words.ts";

/** Where a moved fuse ends up, metres from its source. */
const MOVED_TO_M = 0.15;

export const fuseFar = defineRule({
  id: "fuse-far",
  level: "fix",
  about:
    "The lead from a source to its first fuse is longer than the limit: 0.18 m bare, 1.0 m inside a sheath all the way.",
  source: "33 CFR 183.455 (7 in; 40 in when sheathed), a boat rule; road-vehicle sources say as near as practical",
  check: (study) => study.netlist.wires.flatMap((wire) => farFrom(study, wire)),
  say(finding, study) {
    const { unguardedM, limitM } = finding.measure;
    const how = limitM === fuseDistanceM.sheathed ? "in a sheath" : "outside a sheath";
    const lead = `${placeName(finding, study)} runs ${formatLength(Number(unguardedM))} from ${nameOf(study, finding.at[1]!)}`;
    return `${lead} before the first fuse; nothing protects it there, and ${formatLength(Number(limitM))} is the most ${how}.`;
  },
});

function farFrom(study: Study, wire: NetWire): Finding[] {
  const ways = study.standing.wires[wire.index]!.ways.filter(
    ({ guard, onlyToDevices, unfusedEnd, seriesLink }) => guard === null && onlyToDevices && !unfusedEnd && !seriesLink,
  );
  return ways.flatMap((way): Finding[] => {
    const limitM = way.sheathed ? fuseDistanceM.sheathed : fuseDistanceM.bare;
    if (way.unguardedM === null || !isOver(way.unguardedM, limitM)) return [];
    return [
      {
        ...(wire.wire.main === undefined ? {} : { level: "advice" }),
        at: [wire.wire.id, way.source],
        measure: { unguardedM: way.unguardedM, limitM },
        remedies: [...moveFuse(study, wire, way), ...sheathe(study, wire, way)],
      },
    ];
  });
}

/** The lead shrinks to the fuse's new place; the wire behind the fuse, where there is one of known length, grows by as much. */
function moveFuse(study: Study, wire: NetWire, way: Way): readonly Remedy[] {
  const route = routeTo(study.netlist, way.source, wire, false);
  const leadM = way.unguardedM ?? 0;
  if (!route || leadM <= MOVED_TO_M) return [];
  const shorter = route.map(({ wire: { wire: each } }): Edit => ({
    op: "set-wire",
    id: each.id,
    change: { metres: rounded(((each.metres ?? 0) * MOVED_TO_M) / leadM) },
  }));
  const last = route.at(-1)!;
  const end = last.near === "from" ? last.wire.to : last.wire.from;
  const edits = [
    ...shorter,
    ...lengthenBehind(
      study,
      end.part.terminals.flatMap(({ wires }) => wires),
      route.map((leg) => leg.wire.index),
      leadM - MOVED_TO_M,
    ),
  ];
  return [
    { id: "move-fuse", text: `Move the fuse to ${formatLength(MOVED_TO_M)} from ${nameOf(study, way.source)}`, edits },
  ];
}

function lengthenBehind({ netlist }: Study, wires: readonly number[], lead: readonly number[], byM: number): Edit[] {
  const behind = wires.filter((index) => !lead.includes(index)).map((index) => netlist.wires[index]!.wire);
  const [only] = behind;
  if (behind.length !== 1 || only?.metres === undefined) return [];
  return [{ op: "set-wire", id: only.id, change: { metres: rounded(only.metres + byM) } }];
}

function sheathe(study: Study, wire: NetWire, way: Way): readonly Remedy[] {
  const route = routeTo(study.netlist, way.source, wire, false);
  if (!route || way.sheathed || isOver(way.unguardedM ?? Number.POSITIVE_INFINITY, fuseDistanceM.sheathed)) return [];
  const edits = route.map((leg): Edit => ({ op: "set-wire", id: leg.wire.wire.id, change: { sheathed: true } }));
  return [{ id: "sheathe-lead", text: "Run the lead inside a sheath all the way to the fuse", edits }];
}

function rounded(metres: number): number {
  return Math.round(metres * 1000) / 1000;
}
