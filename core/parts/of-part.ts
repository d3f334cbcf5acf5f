import type { Part } from "../document/index.ts";
import type { Element } from "./elements.ts";
import type { PartFacts } from "./facts.ts";
import type { PartKind, Surroundings, Terminal } from "./part-kind.ts";
import { kindOf } from "./registry.ts";
import type { Setting } from "./setting.ts";

interface Resolved {
  readonly kind: PartKind;
  readonly settings: Record<string, unknown>;
  readonly terminals: readonly Terminal[];
  /** By surroundings. */
  readonly models: Map<string, readonly Element[]>;
}

/** Parts are frozen and shared between versions of a document, so what follows from one can be kept by the object itself. */
const resolved = new WeakMap<Part, Resolved>();

/**
 * The kind's settings for this part: what the file gives, the fallback where it says nothing, `null` where nothing is known.
 * The same part object always gives the same record. Throws RangeError for a kind nobody knows.
 */
export function settingsOf(part: Part): Record<string, unknown> {
  return resolve(part).settings;
}

/** The part's terminals, unturned, in the order they are numbered everywhere. Throws RangeError for a kind nobody knows. */
export function terminalsOf(part: Part): readonly Terminal[] {
  return resolve(part).terminals;
}

/** What the part is made of electrically. Throws RangeError for a kind nobody knows. */
export function modelOf(part: Part, surroundings: Surroundings): readonly Element[] {
  const { kind, settings, models } = resolve(part);
  const key = `${surroundings.nominalV} ${surroundings.seriesUpper}`;
  let model = models.get(key);
  if (!model) {
    model = kind.model(settings, surroundings);
    models.set(key, model);
  }
  return model;
}

/** What rules may know of the part beyond its elements. Throws RangeError for a kind nobody knows. */
export function factsOf(part: Part): PartFacts {
  const { kind, settings } = resolve(part);
  return kind.facts?.(settings) ?? {};
}

function resolve(part: Part): Resolved {
  const known = resolved.get(part);
  if (known) return known;
  const kind = kindOf(part.kind);
  if (!kind)
    throw new RangeError(`settingsOf: there is no kind "${part.kind}" (part "${part.id}"); use a kind of the registry`);
  const settings = filled(kind.settings, part.props ?? {});
  const answer = { kind, settings, terminals: kind.terminals(settings), models: new Map<string, readonly Element[]>() };
  resolved.set(part, answer);
  return answer;
}

function filled(
  settings: Readonly<Record<string, Setting<unknown>>>,
  given: Readonly<Record<string, unknown>>,
): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(settings).map(([name, setting]) => {
      const value = Object.hasOwn(given, name) ? given[name] : undefined;
      if (value === undefined) return [name, setting.fallback];
      return [name, setting.row && Array.isArray(value) ? rows(setting.row, value) : value];
    }),
  );
}

function rows(row: Readonly<Record<string, Setting<unknown>>>, given: readonly unknown[]): unknown[] {
  return given.map((entry) => filled(row, entry as Readonly<Record<string, unknown>>));
}
