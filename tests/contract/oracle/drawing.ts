import type { Document } from "../../../core/document/index.ts";
import { CHASSIS, type Conductor, type Element, type Source } from "./element.ts";
import { elementsOf, positionsOf } from "./kinds.ts";
import { wireOhm } from "./wires.ts";

/** A document as elements between named nodes; wires are conductors. */
export interface Drawing {
  readonly document: Document;
  readonly elements: readonly Element[];
  readonly wires: readonly Conductor[];
  /** Control id to its positions, rest first. */
  readonly controls: ReadonlyMap<string, readonly string[]>;
  /** Nodes that may be a network's zero volts, best first (reading 5). */
  readonly zeros: readonly string[];
  readonly terminals: readonly string[];
}

/** Control id to position; what is not named stands at rest. */
export type Setting = Readonly<Record<string, string>>;

export function drawingOf(document: Document, terminals: readonly string[]): Drawing {
  const nominalV = document.system?.nominalV ?? 12;
  // "Wired straight" is taken to include a bar or strip on the way: its posts are one piece of metal.
  const bars = document.parts.filter(({ kind }) => kind === "bus-bar" || kind === "ground-strip");
  const joined = groups([
    ...document.wires.map(({ from, to }): [string, string] => [from, to]),
    ...bars.flatMap((bar) => elementsOf(bar, nominalV, false).map(({ a, b }): [string, string] => [a, b])),
  ]);
  const batteries = document.parts.filter(({ kind }) => kind === "battery").map(({ id }) => id);
  const isUpper = (id: string) => batteries.some((lower) => lower !== id && joined(`${lower}.+`) === joined(`${id}.-`));
  const elements = document.parts.flatMap((part) => elementsOf(part, nominalV, isUpper(part.id)));
  const { conductorC = 20 } = document.system ?? {};
  const fixed = elements.filter(
    ({ type, ...element }) => type === "conductor" || ("closed" in element && element.closed),
  );
  const metal = groups(
    [...document.wires.map(({ from: a, to: b }) => ({ a, b })), ...fixed].map(({ a, b }): [string, string] => [a, b]),
  );
  const stands = (id: string) => batteries.some((lower) => lower !== id && metal(`${lower}.+`) === metal(`${id}.-`));
  const sorted = [...batteries.filter((id) => !stands(id)), ...batteries.filter((id) => stands(id))];
  const outputs = elements.flatMap((element) => (element.type === "converter" ? [element.outB] : []));
  return {
    document,
    elements,
    wires: document.wires.map(({ id, from, to, size, metres }) => {
      return { type: "conductor", a: from, b: to, ohm: wireOhm(size, metres, conductorC), of: id };
    }),
    controls: new Map([
      ["engine", ["off", "running"]],
      ...document.parts.flatMap((part): [string, readonly string[]][] => {
        const positions = positionsOf(part);
        return positions ? [[part.id, positions]] : [];
      }),
    ]),
    zeros: [...sorted.map((id) => `${id}.-`), CHASSIS, ...outputs],
    terminals,
  };
}

/** Every combination of the controls. */
export function combinationsOf({ controls }: Drawing): Setting[] {
  return [...controls].reduce<Setting[]>(
    (settings, [id, positions]) =>
      settings.flatMap((setting) => positions.map((position) => ({ ...setting, [id]: position }))),
    [{}],
  );
}

/** Whether a source is there: batteries and `always` feeds are, others when their control is on. */
export function isOn({ hasControl, of }: Source, setting: Setting): boolean {
  return !hasControl || setting[of] === "on";
}

/** Finds for a node the one that stands for everything it is joined to. */
export function groups(pairs: readonly (readonly [string, string])[]): (node: string) => string {
  const parent = new Map<string, string>();
  const find = (node: string): string => {
    const next = parent.get(node);
    return next === undefined || next === node ? node : find(next);
  };
  for (const [a, b] of pairs) {
    const [rootA, rootB] = [find(a), find(b)];
    if (rootA !== rootB) parent.set(rootB, rootA);
  }
  return find;
}
