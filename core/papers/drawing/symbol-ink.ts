import type { Point, Stroke } from "../../geometry/index.ts";
import { inkCircle, inkLine, inkPath, mm, RULE_MM } from "../layout/index.ts";
import { onPage, type View } from "./view.ts";

/** One stroke of a symbol in ink; its lettering is placed apart, with everything else that must not collide. */
export function strokeInk(stroke: Stroke, view: View): string {
  switch (stroke.shape) {
    case "line":
      return inkLine(
        stroke.points.map((point) => onPage(view, point)),
        {
          widthMm: RULE_MM[stroke.weight ?? "normal"],
          closed: stroke.closed ?? false,
          fill: stroke.fill ? "black" : "none",
          round: true,
          ...(stroke.dash ? { dash: [1.2, 0.8] } : {}),
        },
      );
    case "circle":
      return inkCircle(onPage(view, stroke.centre), stroke.radius * view.mmPerStep, {
        widthMm: RULE_MM[stroke.weight ?? "normal"],
        fill: stroke.fill ? "black" : "none",
      });
    case "arc":
      return arcInk(stroke, view);
    case "text":
      return "";
  }
}

function arcInk(arc: Stroke & { shape: "arc" }, view: View): string {
  const sweep = (((arc.end - arc.start) % 360) + 360) % 360;
  const radius = mm(arc.radius * view.mmPerStep);
  const from = pointAt(arc.centre, arc.radius, arc.start, view);
  const to = pointAt(arc.centre, arc.radius, arc.end, view);
  const d = `M${mm(from[0])} ${mm(from[1])}A${radius} ${radius} 0 ${sweep > 180 ? 1 : 0} 1 ${mm(to[0])} ${mm(to[1])}`;
  return inkPath(d, { widthMm: RULE_MM[arc.weight ?? "normal"], round: true });
}

function pointAt(centre: Point, radius: number, degrees: number, view: View): Point {
  const angle = (degrees * Math.PI) / 180;
  return onPage(view, [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)]);
}
