import type { Box, Point } from "../../core/geometry/index.ts";
import type { PartPicture } from "../../core/picture/index.ts";

/** A wire shown along another way than the drawing has it: stretched by a drag, or being drawn. */
export interface DraftWire {
  /** The wire it stands for, or empty for a new one. */
  readonly id: string;
  readonly route: readonly Point[];
}

/** Parts and wires taken up by a drag: shown moved by whole grid steps while the document stays as it is. */
export interface Lift {
  /** Parts that move and wires that move or stretch with them; the resting drawing is shown without these. */
  readonly hidden: ReadonlySet<string>;
  /** Those of `hidden` that move unchanged. */
  readonly moving: ReadonlySet<string>;
  readonly dx: number;
  readonly dy: number;
  readonly stretched: readonly DraftWire[];
}

/** What a gesture in progress shows on top of the drawing. View state: never part of the document. */
export interface BoardOverlay {
  /** Part or wire id, or terminal address, under the pointer. */
  readonly hover: string | null;
  /** Where a terminal or a wire attracts the pointer. */
  readonly attract: Point | null;
  readonly marquee: Box | null;
  readonly draft: DraftWire | null;
  readonly ghost: PartPicture | null;
  readonly lift: Lift | null;
}

export const NO_OVERLAY: BoardOverlay = {
  hover: null,
  attract: null,
  marquee: null,
  draft: null,
  ghost: null,
  lift: null,
};
