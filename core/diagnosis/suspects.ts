import type { Document } from "../document/index.ts";
import { faultedNet, possibleFaults } from "../drill/index.ts";
import type { NetElement, Netlist, NetWire } from "../netlist/index.ts";
import { withExtraOhm, withExtraVolts } from "./changed-net.ts";

/** Something that may be wrong. `changed`: the net with it wrong by so much (ohms or volts more); of a fault, with the fault. */
export interface Suspect {
  /** Wire id, part id or terminal address. */
  readonly at: string;
  /** "wire w3 L3 or a crimp on it". */
  readonly name: string;
  readonly trouble: "resistance" | "volts" | "fault";
  changed(amount: number): Netlist;
}

/** Everything that can have ohms too many, every source that may stand low or high, and every fault of the drill. */
export function suspectsOf(document: Document, netlist: Netlist): Suspect[] {
  return [
    ...netlist.wires.map((wire) => wireSuspect(wire, netlist)),
    ...netlist.elements.flatMap((element) => elementSuspects(element, netlist)),
    ...possibleFaults(netlist).map((fault): Suspect => ({
      at: fault.at,
      name: fault.title,
      trouble: "fault",
      changed: () => faultedNet(document, fault).netlist,
    })),
  ];
}

function wireSuspect({ wire, branch }: NetWire, netlist: Netlist): Suspect {
  const label = wire.label === undefined || wire.label === wire.id ? "" : ` ${wire.label}`;
  return {
    at: wire.id,
    name: `wire ${wire.id}${label} or a crimp or stud at its ends`,
    trouble: "resistance",
    changed: (extraOhm) => withExtraOhm(netlist, branch, extraOhm),
  };
}

function elementSuspects({ spec, part, branch }: NetElement, netlist: Netlist): Suspect[] {
  if (branch < 0) return [];
  const { id, label } = part.part;
  const name = `${id.toUpperCase()}${label === undefined || label === "" ? "" : ` ${label}`}`;
  const resistance = (what: string, at = id): Suspect => ({
    at,
    name: what,
    trouble: "resistance",
    changed: (extraOhm) => withExtraOhm(netlist, branch, extraOhm),
  });
  switch (spec.type) {
    case "protection": {
      const way = spec.terminal === "" ? "" : ` way ${spec.terminal}`;
      const at = spec.terminal === "" ? id : `${id}.${spec.terminal}`;
      return [resistance(`holder or blades of ${name}${way}`, at)];
    }
    case "contact":
      return [resistance(`contact ${spec.a} to ${spec.b} of ${name}`, `${id}.${spec.b}`)];
    case "link":
      return [resistance(`joint or strap of ${name}`)];
    case "source":
      return [
        resistance(`${name}: its posts, its clamps or itself`),
        {
          at: id,
          name,
          trouble: "volts",
          changed: (extraV) => withExtraVolts(netlist, branch, extraV),
        },
      ];
    default:
      return [];
  }
}
