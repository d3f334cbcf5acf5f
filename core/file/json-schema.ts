import * as z from "zod/mini";
import { systemDefaults } from "../document/index.ts";
import { partKinds } from "../parts/index.ts";
import { propsSchema } from "./check-parts.ts";
import { circuitSchema, partSchema } from "./circuit-schema.ts";

/** The published JSON Schema of the circuit file, made from the very definitions that check a file on opening. */
export function circuitJsonSchema(): Record<string, unknown> {
  const parts = partKinds.map((kind) =>
    z.looseObject({ ...partSchema.shape, kind: z.literal(kind.kind), props: z.optional(propsSchema(kind)) }),
  );
  const whole = z.looseObject({ ...circuitSchema.shape, parts: z.array(z.union(parts)) });
  const schema = z.toJSONSchema(whole, { io: "input" }) as Record<string, unknown>;
  return withDefaults({ title: "Groundstrap circuit file, version 1", ...schema });
}

/** What holds outside the parts when a file says nothing. */
const DEFAULTS = {
  system: systemDefaults,
  wires: { insulationC: 105, bundle: 1, sheathed: false, measured: true },
  parts: { turn: 0, flip: false },
} as const;

/** What the records of the finished job are; the rest of the file explains itself. */
const RECORDS = {
  readings:
    "Meter readings taken on the finished job. situation: a situation's id, or dead (battery off, fuses out); red and black: terminals, of amps the device or wire the clamp goes round; value in volts, amps or ohms.",
  revisions:
    "The drawing as it was built, oldest first: revision, date, and the circuit file of then without its own readings and revisions.",
} as const;

/** Writes each kind's fallbacks and help into the schema, so that it states every default. */
function withDefaults(schema: Record<string, unknown>): Record<string, unknown> {
  for (const [key, value] of Object.entries(DEFAULTS.system)) {
    if (value !== null) setDefault(at(schema, "properties", "system", "properties", key), value);
  }
  for (const [key, value] of Object.entries(DEFAULTS.wires)) {
    setDefault(at(schema, "properties", "wires", "items", "properties", key), value);
  }
  for (const [key, description] of Object.entries(RECORDS)) {
    (at(schema, "properties", key) as Record<string, unknown>)["description"] = description;
  }
  const variants = at(schema, "properties", "parts", "items", "anyOf") as Record<string, unknown>[];
  partKinds.forEach((kind, index) => {
    for (const [key, value] of Object.entries(DEFAULTS.parts))
      setDefault(at(variants[index]!, "properties", key), value);
    const props = at(variants[index]!, "properties", "props", "properties") as
      Record<string, Record<string, unknown>> | undefined;
    for (const [key, setting] of Object.entries(kind.settings)) {
      const property = props?.[key];
      if (!property) continue;
      property["description"] = [setting.help, setting.follows && `Default: ${setting.follows}.`]
        .filter(Boolean)
        .join(" ");
      if (setting.fallback !== null && setting.fallback !== undefined) property["default"] = setting.fallback;
    }
  });
  return schema;
}

function at(from: unknown, ...keys: string[]): unknown {
  return keys.reduce<unknown>((value, key) => (value as Record<string, unknown> | undefined)?.[key], from);
}

function setDefault(property: unknown, value: unknown): void {
  (property as Record<string, unknown>)["default"] = value;
}
