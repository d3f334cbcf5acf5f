import type { NetElement, Netlist } from "../netlist/index.ts";
import type { Guard } from "./types.ts";

/** Where ways begin: a source's positive, and what protects it there. */
export interface SourceStart {
  readonly element: NetElement;
  /** Part id. */
  readonly id: string;
  readonly node: number;
  /** `undefined`: the way starts with nothing between (a battery). */
  readonly own: Guard | undefined;
}

/** Every source of the drawing, those with a control taken as on, and every converter's output. */
export function sourceStarts(netlist: Netlist): SourceStart[] {
  return netlist.elements.flatMap((element): SourceStart[] => {
    const { spec, part } = element;
    const id = part.part.id;
    if (spec.type === "source") {
      const own = spec.fuseA === undefined ? undefined : { at: id, ratingA: spec.fuseA };
      return [{ element, id, node: element.a, own }];
    }
    if (spec.type === "converter") return [{ element, id, node: element.outA, own: { at: id, ratingA: spec.maxA } }];
    return [];
  });
}
