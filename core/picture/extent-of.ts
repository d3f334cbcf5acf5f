import { type Box, textBox } from "../geometry/index.ts";
import type { Lettering } from "./types.ts";

/** Room that lettering takes on the sheet. */
export function extentOf({ at, text, size, anchor, upright }: Lettering): Box {
  if (!upright) return textBox(at, text, size, anchor);
  const level = textBox([0, 0], text, size, anchor);
  return { left: at[0] + level.top, right: at[0] + level.bottom, top: at[1] - level.right, bottom: at[1] - level.left };
}
