import { splitAddress, type Document, type Edit, type GridPoint, type Part } from "../../core/document/index.ts";
import { settingsOf } from "../../core/parts/index.ts";
import { freeSpot } from "../../core/placing/index.ts";
import type { Plan } from "../commands/command.ts";
import { documentOf, type EditorState } from "../store/editor-state.ts";
import { nextId } from "../store/ids.ts";
import { letterOf, ownKind } from "./own-kind.ts";
import { partOf, propsOf, type BenchSymbol } from "./symbol.ts";

/** Puts the symbol down on a free spot as near as can be to the middle of the Board. */
export function placeSymbol(state: EditorState, symbol: BenchSymbol): Plan {
  const document = documentOf(state);
  const part = freshOwnPart(document, symbol);
  const { view, boardSize } = state;
  const middle: GridPoint = [(boardSize.width / 2 - view.x) / view.scale, (boardSize.height / 2 - view.y) / view.scale];
  const at = freeSpot(document, ownKind.bounds(settingsOf(part)), middle);
  return {
    transaction: {
      label: `Add ${symbol.name || "own symbol"} ${part.id.toUpperCase()}`,
      edits: [{ op: "add-part", part: { ...part, at } }],
    },
    select: [part.id],
  };
}

/** A new part that carries the symbol, under the next free id with its letter. */
export function freshOwnPart(document: Document, symbol: BenchSymbol): Part {
  const part = partOf(symbol, "own");
  return { ...part, id: nextId(document, letterOf(part)) };
}

/**
 * Gives a placed part the symbol as it is on the Bench now. Wires and covers stay on a terminal that got another name; those of a
 * terminal that is gone go with it.
 */
export function changeSymbol(state: EditorState, partId: string, symbol: BenchSymbol): Plan {
  const document = documentOf(state);
  const part = document.parts.find(({ id }) => id === partId);
  if (part === undefined) return { reason: "That part is not on the drawing any more" };
  const nameOf = new Map(symbol.terminals.flatMap(({ name, was }) => (was === undefined ? [] : [[was, name]])));
  const newAddress = (address: string): string | null => {
    const [id, terminal] = splitAddress(address);
    if (id !== partId) return address;
    const name = nameOf.get(terminal);
    return name === undefined ? null : `${partId}.${name}`;
  };
  const wireEdits = document.wires.flatMap((wire): Edit[] => {
    const [from, to] = [newAddress(wire.from), newAddress(wire.to)];
    if (from === null || to === null) return [{ op: "remove-wire", id: wire.id }];
    if (from === wire.from && to === wire.to) return [];
    return [{ op: "set-wire", id: wire.id, change: { from, to } }];
  });
  const label = symbol.name || undefined;
  return {
    transaction: {
      label: `Change ${partId.toUpperCase()} on the Bench`,
      edits: [
        { op: "set-props", id: partId, change: propsOf(symbol) },
        ...(part.label === part.props?.["name"] ? [{ op: "set-part", id: partId, change: { label } } as const] : []),
        ...coverEdits(part, newAddress),
        ...wireEdits,
      ],
    },
    select: [partId],
  };
}

function coverEdits(part: Part, newAddress: (address: string) => string | null): Edit[] {
  const moved = Object.entries(part.covers ?? {})
    .map(([name, cover]) => ({ before: `${part.id}.${name}`, after: newAddress(`${part.id}.${name}`), cover }))
    .filter(({ before, after }) => before !== after);
  return [
    ...moved.map(({ before }): Edit => ({ op: "set-cover", terminal: before, cover: undefined })),
    ...moved.flatMap(({ after, cover }): Edit[] =>
      after === null ? [] : [{ op: "set-cover", terminal: after, cover }],
    ),
  ];
}
