import { memo } from "react";
import type { Stroke } from "../../core/geometry/index.ts";
import type { Pose } from "../../core/parts/index.ts";
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

function StrokeShape({ stroke }: { readonly stroke: Stroke }) {
  switch (stroke.shape) {
    case "line": {
      const points = stroke.points.map(([x, y]) => `${x},${y}`).join(" ");
      const look = `stroke-${stroke.weight ?? "normal"}${stroke.fill ? " stroke-filled" : ""}${stroke.dash ? " stroke-dashed" : ""}`;
      return stroke.closed ? (
        <polygon className={look} points={points} />
      ) : (
        <polyline className={look} points={points} />
      );
    }
    case "circle": {
      const look = `stroke-${stroke.weight ?? "normal"}${stroke.fill ? " stroke-filled" : ""}`;
      return <circle className={look} cx={stroke.centre[0]} cy={stroke.centre[1]} r={stroke.radius} />;
    }
    case "arc":
      return <path className={`stroke-${stroke.weight ?? "normal"}`} d={arcPath(stroke)} />;
    case "text":
      return (
        <text
          x={stroke.centre[0]}
          y={stroke.centre[1] + stroke.size * 0.36}
          fontSize={stroke.size}
          textAnchor={stroke.anchor ?? "middle"}
        >
          {stroke.text}
        </text>
      );
  }
}

function arcPath({ centre: [x, y], radius, start, end }: Extract<Stroke, { shape: "arc" }>): string {
  const point = (degrees: number) => {
    const angle = (degrees * Math.PI) / 180;
    return `${x + radius * Math.cos(angle)} ${y + radius * Math.sin(angle)}`;
  };
  const sweep = (((end - start) % 360) + 360) % 360;
  return `M ${point(start)} A ${radius} ${radius} 0 ${sweep > 180 ? 1 : 0} 1 ${point(end)}`;
}
