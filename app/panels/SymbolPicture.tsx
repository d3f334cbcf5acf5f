import { memo } from "react";
import type { Pose } from "../../core/parts/index.ts";
import { StrokeShape } from "./StrokeShape.tsx";
import type { PartView } from "../store/part-view.ts";

interface Props {
  readonly view: Pick<PartView, "kind" | "settings" | "terminals">;
  readonly pose?: Pose;
  /** CSS pixels to a grid step; smaller where the symbol would not fit `most`. */
  readonly scale?: number;
  readonly most?: { readonly width: number; readonly height: number };
}

const AT_REST: Pose = {};
const MARGIN = 0.4;

/** A part's symbol in the page, from the same strokes as on the Board. */
export const SymbolPicture = memo(function SymbolPicture({ view, pose = AT_REST, scale = 9, most }: Props) {
  const box = view.kind.bounds(view.settings);
  const width = box.right - box.left + 2 * MARGIN;
  const height = box.bottom - box.top + 2 * MARGIN;
  const fitted = most === undefined ? scale : Math.min(scale, most.width / width, most.height / height);
  return (
    <svg
      className="symbol"
      aria-hidden="true"
      width={width * fitted}
      height={height * fitted}
      viewBox={`${box.left - MARGIN} ${box.top - MARGIN} ${width} ${height}`}
    >
      {view.kind.symbol(view.settings, pose).map((stroke, index) => (
        <StrokeShape key={index} stroke={stroke} />
      ))}
      {view.terminals.map(({ name, at }) => (
        <circle key={name} className="symbol-terminal" cx={at[0]} cy={at[1]} r={0.16} />
      ))}
    </svg>
  );
});
