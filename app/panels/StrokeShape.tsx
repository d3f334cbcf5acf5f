import type { Stroke } from "../../core/geometry/index.ts";

/** One stroke of a symbol or a mark as SVG; its look comes from the classes of base.css. */
export function StrokeShape({ stroke }: { readonly stroke: Stroke }) {
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
