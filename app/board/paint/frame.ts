import type { Picture } from "../../../core/picture/index.ts";
import type { Lead, View } from "../board-controller.ts";
import type { BoardOverlay } from "../board-overlay.ts";
import type { BoardMarks } from "../marks.ts";
import type { Palette } from "../palette.ts";

/** All that one frame shows. The painter compares members by identity to find what changed since the last one. */
export interface Frame {
  readonly picture: Picture;
  /** Of the document that `picture` shows. */
  readonly revision: number;
  readonly marks: BoardMarks | null;
  readonly view: View;
  /** CSS pixels. */
  readonly width: number;
  readonly height: number;
  readonly pixelRatio: number;
  readonly palette: Palette;
  readonly lettering: boolean;
  readonly selection: ReadonlySet<string>;
  readonly spotlight: readonly string[];
  readonly leads: readonly Lead[];
  readonly overlay: BoardOverlay;
}
