import type { Wire } from "../../document/index.ts";
import { factsOf } from "../../parts/index.ts";
import type { Remedy, Study } from "../rule.ts";
import { elementsOf, addressOf } from "../study/elements.ts";
import { nameOf } from "../study/words.ts";
import { NewIds } from "./new-ids.ts";

/**
 * A wire from this end of a load to the drawing's ground strip, or else to its first battery's negative; as thick as the wires already
 * on the load, its length to be entered. Empty where there is neither.
 */
export function returnTo(study: Study, address: string): readonly Remedy[] {
  const { netlist } = study;
  const strip = netlist.parts.find(({ part }) => factsOf(part).returnBar);
  const post = strip?.terminals.find(({ wires }) => wires.length === 0)?.address ?? strip?.terminals[0]?.address;
  const battery = elementsOf(netlist, "source").find(({ spec }) => spec.zero);
  const to = post ?? (battery && addressOf(battery, battery.spec.minus));
  if (to === undefined) return [];
  const size = sizeAt(study, address);
  const wire: Wire = {
    id: new NewIds(netlist.document).next("w"),
    from: address,
    to,
    ...(size === undefined ? {} : { size }),
  };
  return [
    {
      id: "add-return",
      text: `Run a ground wire from ${nameOf(study, address)} to ${nameOf(study, to)}`,
      edits: [{ op: "add-wire", wire }],
    },
  ];
}

function sizeAt({ netlist }: Study, address: string): string | undefined {
  const part = netlist.terminalAt.get(address)?.part;
  const wires = part?.terminals.flatMap((terminal) => terminal.wires) ?? [];
  return wires.map((index) => netlist.wires[index]!.wire.size).find((size) => size !== undefined);
}
