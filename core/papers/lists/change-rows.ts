import type { Document, Part, Wire } from "../../document/index.ts";

/** One difference between two revisions of a drawing. */
export interface ChangeRow {
  readonly what: "added" | "removed" | "changed";
  readonly id: string;
  /** "metres: 2.5 to 3"; of something added or removed, what it is. */
  readonly how: string;
}

/** Everything but places on the sheet, which change nothing on the vehicle: system, parts, wires and situations, in that order. */
export function changeRows(before: Document, after: Document): ChangeRow[] {
  return [
    ...fieldChanges("system", before.system ?? {}, after.system ?? {}),
    ...listChanges(before.parts, after.parts, partWords, comparablePart),
    ...listChanges(before.wires, after.wires, wireWords, comparableWire),
    ...listChanges(
      before.situations ?? [],
      after.situations ?? [],
      ({ name, id }) => `situation ${name ?? id}`,
      (situation) => ({ ...situation }),
    ),
  ];
}

function listChanges<T extends { readonly id: string }>(
  before: readonly T[],
  after: readonly T[],
  words: (item: T) => string,
  comparable: (item: T) => Readonly<Record<string, unknown>>,
): ChangeRow[] {
  const old = new Map(before.map((item) => [item.id, item]));
  const now = new Set(after.map(({ id }) => id));
  return [
    ...before
      .filter(({ id }) => !now.has(id))
      .map((item): ChangeRow => ({ what: "removed", id: item.id, how: words(item) })),
    ...after
      .filter(({ id }) => !old.has(id))
      .map((item): ChangeRow => ({ what: "added", id: item.id, how: words(item) })),
    ...after.flatMap((item) => {
      const was = old.get(item.id);
      return was ? fieldChanges(item.id, comparable(was), comparable(item)) : [];
    }),
  ];
}

function fieldChanges(id: string, before: object, after: object): ChangeRow[] {
  const [was, now] = [flattened(before), flattened(after)];
  const keys = [...new Set([...was.keys(), ...now.keys()])];
  return keys.flatMap((key): ChangeRow[] => {
    const [old, fresh] = [was.get(key), now.get(key)];
    if (old === fresh) return [];
    return [{ what: "changed", id, how: `${key}: ${old ?? "not stated"} to ${fresh ?? "not stated"}` }];
  });
}

/** `{ props: { ratingA: 10 } }` as "ratingA" → "10"; the wrapper's own name says nothing to a reader. */
function flattened(value: object, prefix = ""): Map<string, string> {
  const flat = new Map<string, string>();
  for (const [key, entry] of Object.entries(value) as [string, unknown][]) {
    if (entry === undefined) continue;
    if (typeof entry === "object" && entry !== null && !Array.isArray(entry)) {
      const name = key === "props" ? prefix : `${prefix}${key} `;
      for (const [inner, text] of flattened(entry, name)) flat.set(inner, text);
    } else flat.set(`${prefix}${key}`, typeof entry === "string" ? entry : JSON.stringify(entry));
  }
  return flat;
}

function partWords({ kind, label }: Part): string {
  return label === undefined || label === "" ? kind : `${kind}, ${label}`;
}

function wireWords({ from, to, size, metres }: Wire): string {
  return [`${from} to ${to}`, size, metres === undefined ? undefined : `${metres} m`]
    .filter((piece) => piece !== undefined)
    .join(", ");
}

function comparablePart({
  id: _id,
  at: _at,
  turn: _turn,
  flip: _flip,
  ...rest
}: Part): Readonly<Record<string, unknown>> {
  return rest;
}

function comparableWire({ id: _id, via: _via, ...rest }: Wire): Readonly<Record<string, unknown>> {
  return rest;
}
