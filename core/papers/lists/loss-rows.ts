import type { PaperSource } from "../paper.ts";
import { partName, wireName } from "../words/index.ts";
import { conductionOf, type Break } from "./conduction.ts";
import { deviceRows } from "./device-rows.ts";
import { workingSituations } from "./situations.ts";

/** What stops working when one fuse blows, one ground is lost or one wire comes off. */
export interface LossRow {
  readonly lost: string;
  readonly off: string;
}

/** Fuses, then grounds, then wires; what takes nothing with it is left out. */
export function lossRows(source: PaperSource): {
  readonly devices: LossRow[];
  readonly grounds: LossRow[];
  readonly wires: LossRow[];
} {
  const conductions = workingSituations(source).map(({ id }) => conductionOf(source, id));
  const row = (lost: string, broken: Break): LossRow[] => {
    const off = new Set(conductions.flatMap((each) => each.offWithout(broken)).map(({ part }) => partName(part)));
    return off.size === 0 ? [] : [{ lost, off: [...off].join(", ") }];
  };
  const grounds = source.netlist.parts.filter(({ kind, settings }) => {
    const facts = kind.facts?.(settings) ?? {};
    return facts.returnBar === true || facts.surface !== undefined;
  });
  return {
    devices: deviceRows(source).flatMap(({ name, element }) => row(name, element)),
    grounds: grounds.flatMap((part) => row(partName(part.part), part)),
    wires: source.netlist.wires.flatMap((wire) => row(wireName(wire.wire), wire)),
  };
}
