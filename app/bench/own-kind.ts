import type { Part } from "../../core/document/index.ts";
import { kindOf, partKinds, type PartKind } from "../../core/parts/index.ts";

const isDrawnOnBench = (kind: PartKind) => Object.values(kind.settings).some((setting) => setting.type === "bench");

/** The kind whose drawing, terminals and inside a person makes: found by its settings, which only the Bench can set. */
export const ownKind = partKinds.find(isDrawnOnBench)!;

export function isOwn(part: Part): boolean {
  return part.kind === ownKind.kind;
}

/** What ids of such a part start with: the letter of a person's own symbol, or that of the kind. */
export function letterOf(part: Pick<Part, "kind" | "props">): string {
  const letter = part.kind === ownKind.kind ? part.props?.["letter"] : undefined;
  return isLetter(letter) ? letter : (kindOf(part.kind)?.letter ?? "x");
}

/** One to three lower-case letters; "w" is for wires. */
export function isLetter(value: unknown): value is string {
  return typeof value === "string" && /^[a-z]{1,3}$/.test(value) && value !== "w";
}
