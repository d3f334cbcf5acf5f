import type { Pen } from "./drawing-hand.ts";

/** Name, and a sign on a field of 24 by 24. */
const PENS: readonly (readonly [pen: Pen, name: string, path: string, how: string])[] = [
  [
    "move",
    "Move",
    "M12 3v18M3 12h18M9.500 5.500 12 3l2.500 2.500M9.500 18.500 12 21l2.500-2.500M5.500 9.500 3 12l2.500 2.500M18.500 9.500 21 12l-2.500 2.500",
    "Press a piece, press where it goes; or drag it.",
  ],
  ["line", "Line", "M4 18 9 8l5 7 6-10", "Press from corner to corner; press the last one again to end."],
  ["box", "Box", "M4 7h16v10H4z", "Press two opposite corners, or drag."],
  ["circle", "Circle", "M12 4a8 8 0 1 0 .1 0M12 12h.1", "Press the middle, then the rim."],
  ["arc", "Arc", "M4 17a9.500 9.500 0 0 1 16 0", "Press both ends, then a spot it bends through."],
  ["text", "Text", "M5 6h14M12 6v13M9.500 19h5", "Press where its middle is, then type."],
  ["terminal", "Terminal", "M3 12h7M14 8a4 4 0 1 0 .1 0", "Press where a wire goes: whole steps of the grid."],
  ["erase", "Erase", "M10 20h10M4.500 14 13 5l6 5.500L11.500 19H8.500z", "Press what is to go."],
];

export function penHow(pen: Pen): string {
  return PENS.find(([one]) => one === pen)![3];
}

interface Props {
  readonly pen: Pen;
  readonly onTake: (pen: Pen) => void;
}

export function PenRack({ pen, onTake }: Props) {
  return (
    <fieldset className="bench-rack">
      <legend className="unseen">Pen</legend>
      {PENS.map(([one, name, path]) => (
        <label key={one} className="bench-pen">
          <input type="radio" name="bench-pen" checked={one === pen} onChange={() => onTake(one)} />
          <svg className="glyph" aria-hidden="true" width="24" height="24" viewBox="0 0 24 24">
            <path d={path} />
          </svg>
          <span>{name}</span>
        </label>
      ))}
    </fieldset>
  );
}
