import type { Edit, Wire } from "../../../core/document/index.ts";
import { useApp } from "../../app-context.tsx";
import { counted } from "../../commands/command.ts";

type Change = { readonly [K in keyof Wire]?: Wire[K] | undefined };

/** One wire or several as one: what they share, and the same change to all. */
export interface WireEditing {
  /** The value they all have; `undefined` when nothing is said or they differ. */
  shared<K extends keyof Wire>(key: K): Wire[K] | undefined;
  /** What stands in an empty field. */
  unsaid(key: keyof Wire, usual?: string): string;
  /** Changes all of them as one step. */
  set(what: string, change: Change): null;
}

export function useWireEditing(wires: readonly Wire[]): WireEditing {
  const { editor } = useApp();
  const first = wires[0]!;
  const isSame = (key: keyof Wire) => wires.every((wire) => wire[key] === first[key]);
  return {
    shared: (key) => (isSame(key) ? first[key] : undefined),
    unsaid: (key, usual = "not said") => (isSame(key) ? usual : "differ"),
    set: (what, change) => {
      const name = wires.length === 1 ? `wire ${first.id.toUpperCase()}` : counted(wires.length, "wire");
      const edits = wires.map((wire): Edit => ({ op: "set-wire", id: wire.id, change }));
      editor.dispatch({ label: `${what} of ${name}`, edits });
      return null;
    },
  };
}
