import * as z from "zod/mini";
import type { Part } from "../document/index.ts";
import { kindOf, partKinds, settingsOf, type PartKind } from "../parts/index.ts";
import { issueInWords } from "./issue-in-words.ts";
import { quote, refuse } from "./refusal.ts";

const schemas = new WeakMap<PartKind, z.ZodMiniType>();

/** The settings of one kind as a file may give them: each optional, others kept as they are. */
export function propsSchema(kind: PartKind): z.ZodMiniType {
  let schema = schemas.get(kind);
  if (!schema) {
    const shape = Object.entries(kind.settings).map(([key, setting]) => [key, z.optional(setting.schema)]);
    schema = z.looseObject(Object.fromEntries(shape));
    schemas.set(kind, schema);
  }
  return schema;
}

/** Refuses parts of a kind nobody knows, settings outside their kind's limits, and settings that contradict one another. */
export function checkParts(parts: readonly Part[]): void {
  parts.forEach((part, at) => {
    const kind = kindOf(part.kind);
    if (!kind) {
      throw refuse(`parts[${at}].kind`, quote(part.kind), `one of ${partKinds.map((one) => one.kind).join(", ")}`);
    }
    const result = propsSchema(kind).safeParse(part.props ?? {});
    if (!result.success) throw issueInWords(result.error.issues, part.props ?? {}, `parts[${at}].props`);
    const fault = kind.check?.(settingsOf(part));
    if (fault) throw refuse(`parts[${at}].props.${fault.key}`, quote(fault.got), fault.wanted);
  });
}
