import type { Netlist } from "../netlist/index.ts";

/** Something that goes wrong in a finished vehicle. `at` is a wire id, part id or terminal address. */
export interface Fault {
  /** How it failed. */
  readonly mode:
    | "open-wire"
    | "rubbed-through"
    | "blown-fuse"
    | "welded-contact"
    | "swapped-coil-pins"
    | "reversed-battery"
    | "lost-chassis-bond";
  readonly at: string;
  /** As the Drill lists it: "wire G4 is broken". */
  readonly title: string;
}

/** Every fault the drawing has a place for, in the order of its parts and wires. */
export function possibleFaults(netlist: Netlist): Fault[] {
  return [...netlist.wires.flatMap(wireFaults), ...netlist.elements.flatMap(elementFaults)];
}

function wireFaults({ wire }: Netlist["wires"][number]): Fault[] {
  const name = wire.label ?? wire.id;
  return [
    { mode: "open-wire", at: wire.id, title: `Wire ${name} is broken` },
    { mode: "rubbed-through", at: wire.id, title: `Wire ${name} is rubbed through to the frame` },
  ];
}

function elementFaults({ spec, part }: Netlist["elements"][number]): Fault[] {
  const { id, label } = part.part;
  const name = label ?? id;
  switch (spec.type) {
    case "protection":
      return spec.closed
        ? [
            {
              mode: "blown-fuse",
              at: spec.terminal ? `${id}.${spec.terminal}` : id,
              title: `${name}${spec.terminal ? ` way ${spec.terminal}` : ""} has blown`,
            },
          ]
        : [];
    case "contact":
      return [
        {
          mode: "welded-contact",
          at: `${id}.${spec.b}`,
          title: `${name}: contact ${spec.a} to ${spec.b} has welded shut`,
        },
      ];
    case "coil":
      return [
        { mode: "swapped-coil-pins", at: id, title: `${name}: the wires on ${spec.a} and ${spec.b} are swapped` },
      ];
    case "source":
      return spec.zero ? [{ mode: "reversed-battery", at: id, title: `${name} is connected backwards` }] : [];
    case "link":
      return spec.bond === undefined
        ? []
        : [{ mode: "lost-chassis-bond", at: id, title: `${name} has lost its strap to the frame` }];
    default:
      return [];
  }
}
