import type { NetTerminal } from "../../netlist/index.ts";
import type { PaperSource } from "../paper.ts";
import { partName, terminalName, wireName } from "../words/index.ts";
import { conductionOf, type WayStep } from "./conduction.ts";
import type { WorkingSituation } from "./situations.ts";
import { usersOf } from "./users.ts";

/** Volts to battery negative along the way a load's current takes, from the source to the load and on into its return. */
export interface Ladder {
  readonly name: string;
  readonly rungs: readonly Rung[];
}

export interface Rung {
  readonly spot: string;
  /** What lies between this spot and the one before. */
  readonly after: string;
  readonly volts: number | null;
}

/** A ladder for every part that is on in the situation. */
export function ladders(source: PaperSource, { id, readings }: WorkingSituation): Ladder[] {
  const conduction = conductionOf(source, id);
  return usersOf(source).flatMap(({ part, element, minus }) => {
    if (readings.parts[part.part.id]?.on !== true) return [];
    const way = conduction.wayTo(element.a);
    const start = spotAt(source, way[0]?.from ?? -1, null);
    const feed = way.flatMap((step) => rung(source, readings.terminals, step));
    const last: Rung[] = minus
      ? [
          {
            spot: terminalName(minus),
            after: partName(part.part),
            volts: readings.terminals[minus.address]?.volts ?? null,
          },
        ]
      : [];
    const first: Rung[] = start
      ? [{ spot: terminalName(start), after: "", volts: readings.terminals[start.address]?.volts ?? null }]
      : [];
    return [{ name: partName(part.part), rungs: [...first, ...feed, ...last] }];
  });
}

function rung(
  source: PaperSource,
  volts: Readonly<Record<string, { readonly volts: number | null }>>,
  step: WayStep,
): Rung[] {
  const spot = spotAt(source, step.to, step);
  if (!spot) return [];
  const after = "wire" in step.through ? wireName(step.through.wire) : partName(step.through.part.part);
  return [{ spot: terminalName(spot), after, volts: volts[spot.address]?.volts ?? null }];
}

/** The terminal to probe at a node: the end of the very wire or element just passed. */
function spotAt({ netlist }: PaperSource, node: number, step: WayStep | null): NetTerminal | null {
  const at = netlist.terminals.filter((terminal) => terminal.node === node);
  if (step === null) return at[0] ?? null;
  const { through } = step;
  const own =
    "wire" in through
      ? at.find((terminal) => terminal === through.from || terminal === through.to)
      : at.find(({ part }) => part === through.part);
  return own ?? at[0] ?? null;
}
