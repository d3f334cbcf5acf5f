import type { Document, Edit, Part } from "../../core/document/index.ts";
import { partKinds, settingsOf, type PartKind } from "../../core/parts/index.ts";
import { viewOf, partName } from "../store/part-view.ts";
import type { Plan } from "./command.ts";

/** Kinds this part could become without losing a wire, others than its own. */
export function kindsToSwapFor(document: Document, part: Part): readonly PartKind[] {
  return partKinds.filter((kind) => kind.kind !== part.kind && wiresKept(document, part, kind) !== null);
}

/**
 * Makes the part another kind and keeps its wires: a terminal of the same name keeps its wires, the others go to the free
 * terminals of the new kind in order. Settings the new kind knows stay; the rest go.
 */
export function swapKind(document: Document, part: Part, kind: PartKind): Plan {
  const wires = wiresKept(document, part, kind);
  if (wires === null)
    return { reason: `A ${kind.title.toLowerCase()} has too few terminals for the wires on ${partName(part)}` };
  const dropped = Object.fromEntries(
    Object.keys(part.props ?? {})
      .filter((key) => !(key in kind.settings))
      .map((key) => [key, undefined]),
  );
  return {
    transaction: {
      label: `Make ${partName(part)} a ${kind.title.toLowerCase()}`,
      edits: [
        { op: "set-props", id: part.id, change: dropped },
        { op: "set-part", id: part.id, change: { kind: kind.kind } },
        ...wires,
      ],
    },
  };
}

/** The edits that put this part's wires on the new kind's terminals; `null` when there are not enough of them. */
function wiresKept(document: Document, part: Part, kind: PartKind): Edit[] | null {
  const wired = viewOf(part)
    .terminals.map((terminal) => terminal.name)
    .filter((name) =>
      document.wires.some((wire) => wire.from === `${part.id}.${name}` || wire.to === `${part.id}.${name}`),
    );
  const known = Object.fromEntries(Object.entries(part.props ?? {}).filter(([key]) => key in kind.settings));
  const offered = kind
    .terminals(settingsOf({ id: part.id, kind: kind.kind, props: known }))
    .map((terminal) => terminal.name);
  const free = offered.filter((name) => !wired.includes(name));
  const goesTo = new Map<string, string>();
  for (const name of wired) {
    const to = offered.includes(name) ? name : free.shift();
    if (to === undefined) return null;
    goesTo.set(`${part.id}.${name}`, `${part.id}.${to}`);
  }
  return document.wires.flatMap((wire): Edit[] => {
    const from = goesTo.get(wire.from) ?? wire.from;
    const to = goesTo.get(wire.to) ?? wire.to;
    return from === wire.from && to === wire.to ? [] : [{ op: "set-wire", id: wire.id, change: { from, to } }];
  });
}
