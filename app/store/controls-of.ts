import type { Document } from "../../core/document/index.ts";
import { viewOf, partName } from "./part-view.ts";

/** Something a person or the vehicle operates. */
export interface ControlFacts {
  /** "engine", or the part's id. */
  readonly id: string;
  readonly name: string;
  /** What sort of thing it is: "switch", "key", "vehicle signal", "engine". */
  readonly noun: string;
  /** First is the rest position. */
  readonly positions: readonly string[];
  readonly momentary: boolean;
}

const ENGINE: ControlFacts = {
  id: "engine",
  name: "Engine",
  noun: "engine",
  positions: ["off", "running"],
  momentary: false,
};

const worked = new WeakMap<Document["parts"], readonly ControlFacts[]>();

/** The engine, then every part that can be operated, in the order of the drawing. */
export function controlsOf(document: Document): readonly ControlFacts[] {
  let controls = worked.get(document.parts);
  if (controls === undefined) {
    const operated = document.parts.flatMap((part): ControlFacts[] => {
      const control = viewOf(part).control;
      return control === null ? [] : [{ id: part.id, name: partName(part), ...control }];
    });
    controls = [ENGINE, ...operated];
    worked.set(document.parts, controls);
  }
  return controls;
}

/** The position after `now`, round and round. */
export function positionAfter(control: ControlFacts, now: string | undefined): string {
  const at = control.positions.indexOf(now ?? control.positions[0]!);
  return control.positions[(at + 1) % control.positions.length]!;
}

/** Where a momentary control is held at the press after the one that held it at `last`: never at rest. */
export function heldAfter({ positions: [, ...ways] }: ControlFacts, last: string | undefined): string {
  return ways[(ways.indexOf(last ?? "") + 1) % ways.length]!;
}
