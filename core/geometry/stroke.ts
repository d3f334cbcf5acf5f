/**
 * How symbols are drawn: strokes as plain data, in grid steps from the symbol's own origin, x right and y down. The Board, the
 * papers and the Bench all draw from these. Line weights are classes, not numbers, so that each medium keeps its own.
 */
export type Point = readonly [x: number, y: number];
/** `thin` 0.18 mm, `normal` 0.35 mm, `thick` 0.7 mm on paper. */
export type Weight = "thin" | "normal" | "thick";

export type Stroke =
  | {
      readonly shape: "line";
      readonly points: readonly Point[];
      readonly closed?: boolean;
      readonly fill?: boolean;
      readonly weight?: Weight;
      readonly dash?: boolean;
    }
  | {
      readonly shape: "circle";
      readonly centre: Point;
      readonly radius: number;
      readonly fill?: boolean;
      readonly weight?: Weight;
    }
  /** Angles in degrees clockwise from the positive x axis, drawn clockwise from `start` to `end`. */
  | {
      readonly shape: "arc";
      readonly centre: Point;
      readonly radius: number;
      readonly start: number;
      readonly end: number;
      readonly weight?: Weight;
    }
  /** Stays upright however the symbol is turned. `size` is the height in grid steps; `centre` is its middle. */
  | {
      readonly shape: "text";
      readonly centre: Point;
      readonly text: string;
      readonly size: number;
      readonly anchor?: "start" | "middle" | "end";
    };

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}
