/**
 * What the analysis has to say about every terminal and wire, packed for the Board: the worker sends the arrays, the painter
 * draws them as one path per kind of mark. Terminals run part by part in document order, in the order of the kind's terminals;
 * wires and parts run in document order.
 */
export interface BoardMarks {
  /** Revision of the document that was analysed; the arrays fit that document and no other. */
  readonly revision: number;
  /** One of `STANDING`, plus flags of `TERMINAL_FLAG`. */
  readonly terminals: Uint8Array;
  /** Amps in the present situation, positive from `from` to `to`; 0 for none, unknown or unsettled. Never NaN. */
  readonly wires: Float32Array;
  /** Flags of `WIRE_FLAG`. */
  readonly wireFlags: Uint8Array;
  /** Flags of `PART_FLAG`. */
  readonly parts: Uint8Array;
  /** Where each control stands, by part id ("engine" for the engine): which way symbols are drawn. */
  readonly positions: Readonly<Record<string, string>>;
}

/** Low three bits of a terminal's mark. */
export const STANDING = { unknown: 0, dead: 1, ground: 2, switched: 3, atRest: 4, always: 5 } as const;
/** Bits that hold the standing. */
export const STANDING_BITS = 7;
/** `bareSnag`: bare metal named by a snag. */
export const TERMINAL_FLAG = { viaLoad: 8, hotNow: 16, bareSnag: 32 } as const;
/** `unguarded`: hot with no device between it and a source. */
export const WIRE_FLAG = { overload: 1, unguarded: 2, hotNow: 4, snag: 8 } as const;
/** `stop`, `fix`: a snag of that level names the part. */
export const PART_FLAG = { on: 1, pulledIn: 2, stop: 4, fix: 8 } as const;
