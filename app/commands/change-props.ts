import type { Document, Edit, Part } from "../../core/document/index.ts";
import { terminalsOf } from "../../core/parts/index.ts";

/**
 * Edits that change a part's settings. Where that takes terminals away, the wires on them and their covers go too, so that
 * no wire is left without a terminal.
 */
export function changeProps(document: Document, part: Part, change: Readonly<Record<string, unknown>>): Edit[] {
  const props = Object.fromEntries(
    Object.entries({ ...part.props, ...change }).filter(([, value]) => value !== undefined),
  );
  const left = new Set(terminalsOf({ ...part, props }).map((terminal) => terminal.name));
  const gone = terminalsOf(part)
    .filter((terminal) => !left.has(terminal.name))
    .map((terminal) => `${part.id}.${terminal.name}`);
  const loose = document.wires.filter((wire) => gone.includes(wire.from) || gone.includes(wire.to));
  const uncovered = Object.keys(part.covers ?? {}).filter((name) => !left.has(name));
  return [
    { op: "set-props", id: part.id, change },
    ...loose.map((wire): Edit => ({ op: "remove-wire", id: wire.id })),
    ...uncovered.map((name): Edit => ({ op: "set-cover", terminal: `${part.id}.${name}`, cover: undefined })),
  ];
}
