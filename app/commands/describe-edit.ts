import type { Document, Edit } from "../../core/document/index.ts";
import { kindOf } from "../../core/parts/index.ts";
import { formatQuantity } from "../../core/units/index.ts";
import { placeName, viewOf } from "../store/part-view.ts";

/** What an edit will change, in words, before it is done: "F1 Lamps: rating 15 A → 10 A". */
export function describeEdit(document: Document, edit: Edit): string {
  switch (edit.op) {
    case "add-part":
      return `Adds ${kindOf(edit.part.kind)?.title.toLowerCase() ?? edit.part.kind} ${edit.part.id.toUpperCase()}`;
    case "remove-part":
      return `Removes ${placeName(document, edit.id)} and the wires on it`;
    case "set-part":
      return `${placeName(document, edit.id)}: ${changes(partBefore(document, edit.id), edit.change, plainly)}`;
    case "set-props":
      return `${placeName(document, edit.id)}: ${propChanges(document, edit.id, edit.change)}`;
    case "set-cover":
      return `${placeName(document, edit.terminal)}: ${edit.cover === undefined ? "cover as usual" : edit.cover}`;
    case "add-wire": {
      const size = edit.wire.size === undefined ? "" : `, ${edit.wire.size}`;
      return `Adds wire ${edit.wire.id.toUpperCase()} from ${terminalWords(document, edit.wire.from)} to ${terminalWords(document, edit.wire.to)}${size}`;
    }
    case "remove-wire":
      return `Removes ${placeName(document, edit.id)}`;
    case "set-wire": {
      const wire = document.wires.find((one) => one.id === edit.id);
      return `${placeName(document, edit.id)}: ${changes(wire ?? {}, edit.change, plainly)}`;
    }
    case "set-sheet":
      return `Sheet: ${changes(document.sheet ?? {}, edit.change, plainly)}`;
    case "set-system":
      return `Vehicle: ${changes(document.system ?? {}, edit.change, plainly)}`;
    case "set-situations":
      return "Changes the saved situations";
    case "set-notes":
      return "Changes the notes on the drawing";
    case "set-records":
      return "Changes the readings and revisions on record";
  }
}

function partBefore(document: Document, id: string): object {
  return document.parts.find((part) => part.id === id) ?? {};
}

/** A part that is itself only being added has no name in the drawing yet: its address will do. */
function terminalWords(document: Document, address: string): string {
  const isThere = document.parts.some((part) => address.startsWith(`${part.id}.`));
  return isThere ? placeName(document, address) : address.toUpperCase();
}

type Show = (key: string, value: unknown) => string;

function changes(before: object, change: object, show: Show, name: (key: string) => string = spaced): string {
  const old = before as Readonly<Record<string, unknown>>;
  return Object.entries(change)
    .map(([key, value]) =>
      key === "at" || key === "via" ? "moves" : `${name(key)} ${show(key, old[key])} → ${show(key, value)}`,
    )
    .join(", ");
}

function propChanges(document: Document, id: string, change: Readonly<Record<string, unknown>>): string {
  const part = document.parts.find((one) => one.id === id);
  if (part === undefined) return changes({}, change, plainly);
  const { kind } = viewOf(part);
  const show: Show = (key, value) => {
    const setting = kind.settings[key];
    if (typeof value === "number" && setting !== undefined) return formatQuantity(value, setting.unit);
    return setting?.options?.find((option) => option.value === value)?.label ?? plainly(key, value);
  };
  return changes(part.props ?? {}, change, show, (key) => kind.settings[key]?.label.toLowerCase() ?? spaced(key));
}

const plainly: Show = (_key, value) => {
  if (value === undefined || value === null) return "not said";
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (Array.isArray(value)) return `${value.length} rows`;
  return typeof value === "string" || typeof value === "number" ? `${value}` : "changed";
};

/** "insulationC" as "insulation C". */
function spaced(key: string): string {
  return key.replace(/([a-z])([A-Z])/g, "$1 $2");
}
