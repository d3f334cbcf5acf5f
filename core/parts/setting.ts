import * as z from "zod/mini";

/** Units a setting may carry; the Card shows and parses them, the file holds the bare number. */
export type SettingUnit = "V" | "A" | "W" | "ohm" | "mohm" | "Ah" | "s" | "mm2" | "";

/**
 * One thing a person can set on a part. `schema` checks what a file says; `fallback` holds when it says nothing, and is `null`
 * where nothing may be assumed (a rating nobody gave) or where it follows from something else (`follows` says from what).
 */
export interface Setting<T> {
  /** `texts`: a list with one text, or several, in each place. `bench`: drawn and put together on the Bench, not typed. */
  readonly type: "quantity" | "whole" | "choice" | "flag" | "text" | "list" | "texts" | "bench";
  readonly label: string;
  /** One sentence in trade words, shown beside the field. */
  readonly help: string;
  readonly unit: SettingUnit;
  readonly fallback: T;
  /** What holds when nothing is said, where that is not one value: "2.1 times the pull-in volts". */
  readonly follows?: string;
  readonly min?: number;
  readonly max?: number;
  readonly options?: readonly { readonly value: string; readonly label: string }[];
  /** For `list`: the settings of each row. */
  readonly row?: Readonly<Record<string, Setting<unknown>>>;
  readonly schema: z.ZodMiniType;
}

interface QuantityOptions {
  readonly min: number;
  readonly max: number;
  readonly help: string;
}

type Options<V extends string> = readonly { readonly value: V; readonly label: string }[];

/** A number with a unit that has a usual value. */
export function quantity(
  label: string,
  unit: SettingUnit,
  fallback: number,
  options: QuantityOptions,
): Setting<number> {
  return { ...number(label, unit, options), fallback, schema: bounded(options) };
}

/** A number with a unit that nobody may assume; `null` until the person says it. */
export function rating(
  label: string,
  unit: SettingUnit,
  options: QuantityOptions & { readonly follows?: string },
): Setting<number | null> {
  return { ...number(label, unit, options), fallback: null, schema: z.nullable(bounded(options)) };
}

/** A number where `null` is an answer of its own ("none"), so that nothing said stays `undefined`; `follows` tells what holds then. */
export function numberOrNone(
  label: string,
  unit: SettingUnit,
  options: QuantityOptions & { readonly follows: string },
): Setting<number | null | undefined> {
  return { ...number(label, unit, options), fallback: undefined, schema: z.nullable(bounded(options)) };
}

export function whole(label: string, fallback: number, options: QuantityOptions): Setting<number> {
  return { type: "whole", label, unit: "", fallback, ...options, schema: bounded(options).check(z.multipleOf(1)) };
}

export function choice<const V extends string>(
  label: string,
  fallback: V,
  help: string,
  options: Options<V>,
): Setting<V> {
  return { type: "choice", label, unit: "", help, fallback, options, schema: z.enum(values(options)) };
}

/** A choice nobody may make for the person; `null` until they say it. */
export function unsaidChoice<const V extends string>(
  label: string,
  help: string,
  options: Options<V>,
): Setting<V | null> {
  return {
    type: "choice",
    label,
    unit: "",
    help,
    fallback: null,
    options,
    schema: z.nullable(z.enum(values(options))),
  };
}

export function flag(label: string, fallback: boolean, help: string): Setting<boolean> {
  return { type: "flag", label, unit: "", help, fallback, schema: z.boolean() };
}

/** A short text that must have a certain form; `null` until the person says it. `wanted` says which, to follow the word "wanted". */
export function text(label: string, help: string, form: RegExp, wanted: string): Setting<string | null> {
  const schema = z.nullable(
    z.string().check(
      z.maxLength(60),
      z.refine((given) => form.test(given), { error: wanted }),
    ),
  );
  return { type: "text", label, unit: "", help, fallback: null, schema };
}

export function list<R>(
  label: string,
  fallback: readonly R[],
  help: string,
  row: { readonly [K in keyof R]: Setting<R[K]> },
): Setting<readonly R[]> {
  const shape = Object.fromEntries(
    Object.entries<Setting<unknown>>(row).map(([key, setting]) => [key, z.optional(setting.schema)]),
  );
  return {
    type: "list",
    label,
    unit: "",
    help,
    fallback,
    row,
    schema: z.array(z.looseObject(shape)).check(z.minLength(1), z.maxLength(64)),
  };
}

/** A list whose places hold one text or several, up to 64 of each. */
export function texts(label: string, help: string): Setting<readonly (string | readonly string[])[]> {
  const word = z.string().check(z.maxLength(60));
  const several = z.array(word).check(z.maxLength(64));
  const schema = z.array(z.union([word, several])).check(z.maxLength(64));
  return { type: "texts", label, unit: "", help, fallback: [], schema };
}

function number(label: string, unit: SettingUnit, options: QuantityOptions) {
  return { type: "quantity" as const, label, unit, ...options };
}

function bounded({ min, max }: QuantityOptions) {
  return z.number().check(z.gte(min), z.lte(max));
}

function values<V extends string>(options: Options<V>): V[] {
  return options.map((option) => option.value);
}
