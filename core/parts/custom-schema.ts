import * as z from "zod/mini";
import { elementForms } from "./custom-elements.ts";

/**
 * What a file may say of a person's own symbol. Everything is counted and bounded: whatever a file holds, reading and drawing it
 * takes a bounded time, and nothing in it is ever run.
 */
const coordinate = z.number().check(z.gte(-100), z.lte(100));
const point = z.tuple([coordinate, coordinate]);
const gridStep = z.number().check(z.gte(-50), z.lte(50), z.multipleOf(1));
const weight = z.optional(z.enum(["thin", "normal", "thick"]));
const degrees = z.number().check(z.gte(-360), z.lte(720));
const radius = z.number().check(z.gte(0.01), z.lte(100));
const cover = z.optional(z.enum(["bare", "covered", "cavity"]));

const reserved = new Set(["__proto__", "prototype", "constructor"]);

/** Names of terminals, positions and coils: short plain words that can't collide with what the language itself keeps in records. */
const word = z.string().check(
  z.refine((name) => /^[A-Za-z0-9+_-]{1,16}$/u.test(name) && !reserved.has(name), {
    error: "1 to 16 letters, digits, +, - or _",
  }),
);
const end = z.string().check(
  z.refine((name) => /^\$?[A-Za-z0-9+_-]{1,16}$/u.test(name) && !reserved.has(name), {
    error: "a terminal, a $node inside the symbol, or $chassis",
  }),
);

export const terminalsSchema = z
  .array(
    z.looseObject({
      name: word,
      at: z.tuple([gridStep, gridStep]),
      exit: z.enum(["left", "right", "up", "down"]),
      about: z.optional(z.string().check(z.maxLength(120))),
      wired: cover,
      unwired: cover,
      fixing: z.optional(z.enum(["stud", "ground-screw", "tab", "contact", "lead", "joint"])),
    }),
  )
  .check(
    z.minLength(1),
    z.maxLength(64),
    z.refine((all) => new Set(all.map(({ name }) => name)).size === all.length, {
      error: "each terminal name once",
    }),
  );

const strokeSchema = z.discriminatedUnion("shape", [
  z.looseObject({
    shape: z.literal("line"),
    points: z.array(point).check(z.minLength(2), z.maxLength(200)),
    closed: z.optional(z.boolean()),
    fill: z.optional(z.boolean()),
    dash: z.optional(z.boolean()),
    weight,
  }),
  z.looseObject({ shape: z.literal("circle"), centre: point, radius, fill: z.optional(z.boolean()), weight }),
  z.looseObject({ shape: z.literal("arc"), centre: point, radius, start: degrees, end: degrees, weight }),
  z.looseObject({
    shape: z.literal("text"),
    centre: point,
    text: z.string().check(z.maxLength(24)),
    size: z.number().check(z.gte(0.2), z.lte(5)),
    anchor: z.optional(z.enum(["start", "middle", "end"])),
  }),
]);

export const drawingSchema = z.array(strokeSchema).check(z.maxLength(400));

export const positionsSchema = z.array(word).check(
  z.maxLength(12),
  z.refine((all) => new Set(all).size === all.length, { error: "each position once" }),
);

const elementSchemas = Object.entries(elementForms).map(([type, form]) =>
  z.looseObject({
    type: z.literal(type),
    name: z.optional(word),
    positions: z.optional(positionsSchema),
    coil: z.optional(word),
    ...Object.fromEntries(form.ends.map((name) => [name, end])),
    ...Object.fromEntries(Object.entries(form.settings).map(([name, { schema }]) => [name, z.optional(schema)])),
  }),
);

export const elementsSchema = z
  .array(z.discriminatedUnion("type", elementSchemas as [(typeof elementSchemas)[number], ...typeof elementSchemas]))
  .check(z.maxLength(200));
