import type { Cover, Document, Part, SystemSettings, Wire } from "../../core/document/index.ts";
import { readItem, type Item } from "./item-notation.ts";
import { readWireNote } from "./wire-notation.ts";

/** What chains can't say. */
interface More {
  readonly system?: SystemSettings;
  /** Situation id to the controls it sets. */
  readonly situations?: Readonly<Record<string, Readonly<Record<string, string>>>>;
  readonly covers?: Readonly<Record<string, Cover>>;
}

/** A wire as in `>` or `>(14 AWG, 3 m)>`. */
const ARROW = /\s*>(?:\(([^)]*)\)>)?\s*/;

/**
 * A document from chains of parts in one line each: `circuit("bat:battery > f1:fuse 10A > la1:lamp 55W > ground")`.
 *
 * An item is `[id:]kind [values]`, or the id of a part named before. Values are amounts ("10A", "55W", "12.6V", "90ohm", "100Ah",
 * the setting follows from the kind) or `setting=value`. The chain enters and leaves at the kind's usual terminals; `k1.30/87`
 * says which, `k1.86` enters and leaves at one. `ground` is a chassis point of its own each time.
 *
 * `>` is a wire of 10 AWG and 0.1 m, too short and too thick to trip a rule; `>(16 AWG, 3 m, sheathed, id=feed, main=winch)>`
 * says otherwise, `?` for a size or length nobody gave. Wires are named w1, w2, ... in the order written; parts without an id by their kind and number: fuse1.
 */
export function circuit(chains: string | readonly string[], more: More = {}): Document {
  const parts = new Map<string, Part>();
  const wires: Wire[] = [];
  for (const chain of [chains].flat()) addChain(chain, parts, wires);
  for (const [address, cover] of Object.entries(more.covers ?? {})) coverTerminal(parts, address, cover);
  return {
    format: "groundstrap",
    version: 1,
    ...(more.system ? { system: more.system } : {}),
    parts: [...parts.values()],
    wires,
    ...(more.situations
      ? { situations: Object.entries(more.situations).map(([id, set]) => ({ id, name: id, set })) }
      : {}),
  };
}

function addChain(chain: string, parts: Map<string, Part>, wires: Wire[]): void {
  const [first = "", ...rest] = chain.split(ARROW);
  let item = place(first, parts);
  for (let at = 0; at < rest.length; at += 2) {
    const next = place(rest[at + 1] ?? "", parts);
    const from = `${item.id}.${item.leaves}`;
    const to = `${next.id}.${next.enters}`;
    wires.push({ id: `w${wires.length + 1}`, from, to, label: `${wires.length + 1}`, ...readWireNote(rest[at] ?? "") });
    item = next;
  }
}

function place(text: string, parts: Map<string, Part>): Item {
  const item = readItem(text, (id) => parts.get(id)?.kind ?? null, parts.size);
  if (item.part) parts.set(item.id, item.part);
  return item;
}

function coverTerminal(parts: Map<string, Part>, address: string, cover: Cover): void {
  const [id = "", terminal = ""] = address.split(".");
  const part = parts.get(id);
  if (!part) throw new RangeError(`circuit: "${address}" is covered, but no part "${id}" is drawn`);
  parts.set(id, { ...part, covers: { ...part.covers, [terminal]: cover } });
}
