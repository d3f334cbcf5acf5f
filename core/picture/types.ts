import type { Box, Point, Stroke } from "../geometry/index.ts";

/** A piece of lettering in sheet coordinates; `at` is the middle of its height at the anchor. Height in grid steps. */
export interface Lettering {
  readonly at: Point;
  readonly text: string;
  readonly anchor: "start" | "middle" | "end";
  readonly size: number;
  /** Reads upwards along a vertical wire. */
  readonly upright: boolean;
  /** What it says: a part's name, what is set on it, a terminal as marked on the part, a wire's particulars, or a line of a note. */
  readonly role: "name" | "caption" | "terminal" | "wire" | "note";
}

export interface TerminalPicture {
  readonly address: string;
  readonly at: Point;
  /** `any`: a bare joint, where a wire may leave on any side. */
  readonly exit: "left" | "right" | "up" | "down" | "any";
}

/** A part as it stands on the sheet: its symbol turned, flipped and moved; text always reads upright. */
export interface PartPicture {
  readonly id: string;
  readonly strokes: readonly Stroke[];
  readonly box: Box;
  /** What wires keep clear of: the symbol and its name and caption. */
  readonly room: readonly Box[];
  /** All it draws, lettering included, line widths not. */
  readonly extent: Box;
  readonly lettering: readonly Lettering[];
  readonly terminals: readonly TerminalPicture[];
}

export interface WirePicture {
  readonly id: string;
  /** Addresses of the terminals it joins, in the order of its route. */
  readonly ends: readonly [from: string, to: string];
  /** Corners of the right-angle route, ends included. */
  readonly route: readonly Point[];
  /** Where this wire steps over another one; drawn as a small bow so that a crossing can't be read as a joint. */
  readonly hops: readonly Point[];
  readonly lettering: readonly Lettering[];
  /** All it draws, lettering included, line widths not. */
  readonly extent: Box;
}

/** The whole drawing in grid steps, ready for any medium: the Board paints it, the papers print it. */
export interface Picture {
  /** In the order of the document, then its notes, which are lettering alone. */
  readonly parts: readonly PartPicture[];
  readonly wires: readonly WirePicture[];
  /** Terminals where several wires meet; drawn as a dot. */
  readonly joints: readonly Point[];
  readonly box: Box;
}
