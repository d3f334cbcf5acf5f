import type { NetElement, NetPart, NetTerminal } from "../../netlist/index.ts";
import type { ConverterElement, Load } from "../../parts/index.ts";
import type { PaperSource } from "../paper.ts";

/** A part a person sees as on or off: a lamp, a motor, a converter. */
export interface User {
  readonly part: NetPart;
  readonly element: NetElement<Load | ConverterElement>;
  /** Where its feed and its return end; `null` for an end inside the part. */
  readonly plus: NetTerminal | null;
  readonly minus: NetTerminal | null;
}

/** Everything that uses current, one entry per part, in the order of the drawing. */
export function usersOf({ netlist }: PaperSource): User[] {
  return netlist.parts.flatMap((part) => {
    const element = part.elements.find(isUse);
    if (!element) return [];
    const at = (node: number) => part.terminals.find((terminal) => terminal.node === node) ?? null;
    return [{ part, element, plus: at(element.a), minus: at(element.b) }];
  });
}

function isUse(element: NetElement): element is NetElement<Load | ConverterElement> {
  return element.spec.type === "converter" || (element.spec.type === "load" && element.spec.role === "use");
}
