import { fitted } from "../../parts/index.ts";
import type { Remedy, Study } from "../rule.ts";
import { nameOf } from "../study/words.ts";
import { insertInWire } from "./insert-in-wire.ts";
import { NewIds } from "./new-ids.ts";

/** A switch in the only wire on this terminal; empty where it has none or several. */
export function switchInFeed(study: Study, address: string): readonly Remedy[] {
  const { netlist } = study;
  const [only, ...others] = netlist.terminalAt.get(address)?.wires ?? [];
  if (only === undefined || others.length > 0) return [];
  const { wire } = netlist.wires[only]!;
  const edits = insertInWire(netlist.document, new NewIds(netlist.document), wire, {
    kind: fitted.switch,
    props: {},
    towardsFrom: "1",
    towardsTo: "2",
    end: wire.from === address ? "from" : "to",
    withinM: 0.3,
  });
  return [{ id: "fit-switch", text: `Fit a switch in ${nameOf(study, wire.id)}`, edits }];
}
