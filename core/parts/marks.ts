import type { Stroke } from "../geometry/index.ts";
import { corners, line, outline, ring, solid } from "./drawing.ts";

/** How a terminal stands: hot always, hot at rest, hot only when something is operated, joined to the return, or none of these. */
export type Mark = "always" | "at-rest" | "switched" | "ground" | "dead";

/** What each mark means, for the key on the Board and on the papers. */
export const markLegend: Readonly<Record<Mark, string>> = {
  always: "live in every position",
  "at-rest": "live with everything off",
  switched: "live only when operated",
  ground: "return to negative",
  dead: "never live",
};

/** Half the size of a mark, grid steps: 2 mm across on paper. */
const half = 0.2;

/**
 * Strokes of a terminal mark around the origin, grid steps, 2 mm across. Each differs by its shape, so none hangs on colour:
 * the longer a terminal is live, the more ink. Live through a load only: the same shape in outline with a bar beneath it.
 */
export function markStrokes(mark: Mark, viaLoad: boolean): readonly Stroke[] {
  const shape = viaLoad ? hollow[mark] : full[mark];
  return viaLoad && mark !== "ground" && mark !== "dead" ? [...shape, underline] : shape;
}

const square = corners(-half, -half, half, half);
const upright = [
  [0, -half * 1.2],
  [half * 1.2, half],
  [-half * 1.2, half],
] as const;

const underline = line([
  [-half * 1.3, half * 1.8],
  [half * 1.3, half * 1.8],
]);

const flat: readonly Stroke[] = [
  line([
    [-half * 1.2, -half * 0.5],
    [half * 1.2, -half * 0.5],
  ]),
  line([
    [-half * 0.6, half * 0.5],
    [half * 0.6, half * 0.5],
  ]),
];

const cross: readonly Stroke[] = [
  line(
    [
      [-half * 0.7, -half * 0.7],
      [half * 0.7, half * 0.7],
    ],
    "thin",
  ),
  line(
    [
      [-half * 0.7, half * 0.7],
      [half * 0.7, -half * 0.7],
    ],
    "thin",
  ),
];

const full: Readonly<Record<Mark, readonly Stroke[]>> = {
  always: [solid(square)],
  "at-rest": [solid(upright)],
  switched: [ring(0, 0, half)],
  ground: flat,
  dead: cross,
};

const hollow: Readonly<Record<Mark, readonly Stroke[]>> = {
  always: [outline(square)],
  "at-rest": [outline(upright)],
  switched: [ring(0, 0, half)],
  ground: flat,
  dead: cross,
};
