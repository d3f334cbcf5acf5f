import type { BoardMarks } from "../../../app/board/marks.ts";
import type { Document, Part, Wire } from "../../../core/document/index.ts";
import { terminalsOf } from "../../../core/parts/index.ts";

/** Kinds as they are mixed in a large drawing. */
const KINDS = ["lamp", "fuse", "relay", "switch", "motor", "resistor"] as const;
/** Grid steps from one part to the next. */
const SPACING = 12;
const WIRES_PER_PART = 1.3;

/** A drawing of so many parts in rows, wired to their neighbours; always the same one. */
export function bigDrawing(count: number): Document {
  const across = Math.ceil(Math.sqrt(count * 1.6));
  const parts = Array.from({ length: count }, (_, i): Part => {
    return {
      id: `p${i}`,
      kind: KINDS[(i * 7 + (i >> 3)) % KINDS.length]!,
      at: [(i % across) * SPACING, Math.floor(i / across) * SPACING],
    };
  });
  const random = sequence(12_345);
  const addressOf = (part: Part) => {
    const terminals = terminalsOf(part);
    return `${part.id}.${terminals[Math.floor(random() * terminals.length)]!.name}`;
  };
  const wires = Array.from({ length: Math.round(count * WIRES_PER_PART) }, (_, k): Wire => {
    const from = k % count;
    const aside = (from % across) + 1 < across && from + 1 < count ? 1 : -1;
    const below = from + across < count ? across : -across;
    const to = from + (random() < 0.6 ? aside : below);
    return {
      id: `w${k}`,
      from: addressOf(parts[from]!),
      to: addressOf(parts[to]!),
      size: "14 AWG",
      metres: 1.5,
      colour: "RD",
    };
  });
  return { format: "groundstrap", version: 1, parts, wires };
}

/** Marks as an analysis might give them, another set for each `turn`. */
export function someMarks({ parts, wires }: Document, revision: number, turn: number): BoardMarks {
  const random = sequence(turn + 1);
  const terminals = parts.reduce((sum, part) => sum + terminalsOf(part).length, 0);
  return {
    revision,
    terminals: Uint8Array.from({ length: terminals }, () => Math.floor(random() * 6) + (random() < 0.3 ? 16 : 0)),
    wires: Float32Array.from(wires, () => (random() < 0.3 ? random() * 20 : 0)),
    wireFlags: Uint8Array.from(wires, () => (random() < 0.3 ? 4 : 0) + (random() < 0.02 ? 1 : 0)),
    parts: new Uint8Array(parts.length),
    positions: {},
  };
}

/** Numbers from 0 up to 1, the same every time. Source: the linear congruential generator of ISO C's rand() example. */
function sequence(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_103_515_245) + 12_345) & 0x7fffffff;
    return state / 0x80000000;
  };
}
