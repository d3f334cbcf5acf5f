import { restCombination, type Netlist } from "../netlist/index.ts";
import { solveCombination } from "../readings/index.ts";
import { groupMap } from "./group-map.ts";
import type { Group } from "./groups.ts";
import type { Heat } from "./heat.ts";
import type { Rails } from "./rails.ts";
import { TruthTable } from "./truth-table.ts";

/**
 * A group with too many combinations to solve: at rest is solved for certain; beyond that relays are free, every contact counts
 * as one that may be closed, and nothing is called "always". Each class errs towards hot, never towards cold.
 */
export function overlargeGroup(netlist: Netlist, rails: Rails, group: Group): Map<number, Heat> {
  const rest = solveCombination(netlist, restCombination(netlist));
  const one: Group = { ...group, controls: [], size: 1 };
  const atRest = groupMap(netlist, rails, heldAtRest(group), {
    pulledIn: new Map(group.coils.map((coil) => [coil.index, flag(rest.pulledIn[coil.relay] === 1)])),
    working: new Map(),
    settled: TruthTable.full(1),
    samples: [],
    isSampled: false,
  });
  const open = { pulledIn: new Map(), working: new Map(), settled: TruthTable.full(1), samples: [], isSampled: false };
  const everywhere = groupMap(netlist, rails, { ...one, elements: one.elements.map(alwaysClosed) }, open);
  return new Map(
    [...new Set([...everywhere.direct.keys(), ...everywhere.load.keys()])].flatMap((node): [number, Heat][] => {
      const direct = everywhere.direct.get(node)?.has(0) ?? false;
      if (!direct && !(everywhere.load.get(node)?.has(0) ?? false)) return [];
      const restDirect = atRest.direct.get(node)?.has(0) ?? false;
      const restLoad = atRest.load.get(node)?.has(0) ?? false;
      return [
        [
          node,
          {
            hot: restDirect || restLoad ? "at-rest" : "switched",
            via: direct ? "direct" : "load",
            when: "in positions too many to list",
            atRest: restDirect ? "direct" : restLoad ? "load" : null,
          },
        ],
      ];
    }),
  );

  function heldAtRest(whole: Group): Group {
    const held = whole.elements.filter((element) => {
      const { spec } = element;
      const moved = spec.type === "contact" || spec.type === "source" || spec.type === "converter";
      return !moved || rest.active[element.branch] === 1;
    });
    return { ...whole, controls: [], size: 1, elements: held.map(alwaysClosed) };
  }
}

function alwaysClosed(element: Group["elements"][number]): Group["elements"][number] {
  const { spec } = element;
  if (spec.type === "source") return { ...element, spec: { ...spec, when: null } };
  if (spec.type === "contact") return { ...element, spec: { type: "link", a: spec.a, b: spec.b, ohm: spec.ohm } };
  return element;
}

function flag(value: boolean): TruthTable {
  return value ? TruthTable.full(1) : new TruthTable(1);
}
