import type { Netlist } from "../../netlist/index.ts";
import { factsOf, type PartFacts } from "../../parts/index.ts";
import { elementsOf, type ElementOf } from "./elements.ts";
import { fedFrom } from "./spread.ts";

/** A wire of the vehicle that is tapped, with what we hung on it. */
export interface TappedFeed {
  readonly source: ElementOf<"source">;
  readonly facts: NonNullable<PartFacts["feed"]>;
  /** Consumers it could feed, over every contact. */
  readonly feeds: ReturnType<typeof fedFrom>;
}

export function tappedFeeds(netlist: Netlist): readonly TappedFeed[] {
  return elementsOf(netlist, "source").flatMap((source): TappedFeed[] => {
    const { feed } = factsOf(source.part.part);
    return feed ? [{ source, facts: feed, feeds: fedFrom(netlist, source.a) }] : [];
  });
}

/** What a feed's own vehicle already has on it. */
export function existingOf(netlist: Netlist, { part }: ElementOf<"source">): readonly ElementOf<"load">[] {
  return elementsOf(netlist, "load").filter((load) => load.part === part && load.spec.role === "existing");
}
