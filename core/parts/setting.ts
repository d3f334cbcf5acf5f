import * as z from "zod/mini";

/** Units a setting may carry; the Card shows and parses them, the file holds the bare number. */
export type SettingUnit = "V" | "A" | "W" | "ohm" | "mohm" | "Ah" | "s" | "mm2" | "";

/**
 * One thing a person can set on a part. `schema` checks what a file says; `fallback` holds when it says nothing, and is `null`
 * where nothing may be assumed (a rating nobody gave).
 */
export interface Setting<T> {
  readonly type: "quantity" | "whole" | "choice" | "flag" | "text" | "list";
  readonly label: string;
  /** One sentence in trade words, shown beside the field. */
  readonly help: string;
  readonly unit: SettingUnit;
  readonly fallback: T;
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

/** A number with a unit that has a usual value. */
export function quantity(label: string, unit: SettingUnit, fallback: number, options: QuantityOptions): Setting<number> {
  return { ...number(label, unit, options), fallback, schema: bounded(options) };
}

/** A number with a unit that nobody may assume; `null` until the person says it. */
export function rating(label: string, unit: SettingUnit, options: QuantityOptions): Setting<number | null> {
  return { ...number(label, unit, options), fallback: null, schema: z.nullable(bounded(options)) };
}

export function whole(label: string, fallback: number, options: QuantityOptions): Setting<number> {
  return { type: "whole", label, unit: "", fallback, ...options, schema: bounded(options).check(z.multipleOf(1)) };
}

export function choice<const V extends string>(
  label: string,
  fallback: V,
  help: string,
  options: readonly { readonly value: V; readonly label: string }[],
): Setting<V> {
  return { type: "choice", label, unit: "", help, fallback, options, schema: z.enum(options.map((option) => option.value)) };
}

export function flag(label: string, fallback: boolean, help: string): Setting<boolean> {
  return { type: "flag", label, unit: "", help, fallback, schema: z.boolean() };
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
    row: row as Readonly<Record<string, Setting<unknown>>>,
    schema: z.array(z.looseObject(shape)).check(z.minLength(1), z.maxLength(64)),
  };
}

function number(label: string, unit: SettingUnit, options: QuantityOptions) {
  return { type: "quantity" as const, label, unit, ...options };
}

function bounded({ min, max }: QuantityOptions) {
  return z.number().check(z.gte(min), z.lte(max));
}
