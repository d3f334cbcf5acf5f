import { controlNumber, controlPositions, NodeSets, type NetElement, type Netlist } from "../netlist/index.ts";

/** What must be known of the rails to tell circuits apart. */
interface Bounds {
  readonly classOf: Int32Array;
  readonly isRail: Uint8Array;
}

/** Elements that are more than a fixed conductor. */
export function movingElements(netlist: Netlist): NetElement[] {
  return netlist.elements.filter((element) => element.branch >= 0 && !isFixed(element));
}

export function isFixed({ spec }: NetElement): boolean {
  return spec.type === "link" || (spec.type === "protection" && spec.closed);
}

/** Nodes an element stands between. */
export function nodesOf({ a, b, outA, outB }: NetElement): number[] {
  return [a, b, outA, outB].filter((node) => node >= 0);
}

/** Joins elements (by their place in `moving`) that share a class that is no rail, a control, or a coil and its contact. */
export function joinCircuits(netlist: Netlist, { classOf, isRail }: Bounds, moving: readonly NetElement[]): NodeSets {
  const circuits = new NodeSets(moving.length);
  const first = new Map<string, number>();
  const meet = (key: string, index: number) => {
    const other = first.get(key);
    if (other === undefined) first.set(key, index);
    else circuits.join(other, index);
  };
  moving.forEach((element, index) => {
    for (const node of nodesOf(element)) {
      const one = classOf[node]!;
      if (isRail[one] === 0) meet(`class ${one}`, index);
    }
    if (controlPositions(element)) meet(`control ${controlNumber(netlist, element)}`, index);
    if (element.coil >= 0) meet(`coil ${element.coil}`, index);
    if (element.spec.type === "coil") meet(`coil ${element.index}`, index);
  });
  return circuits;
}
