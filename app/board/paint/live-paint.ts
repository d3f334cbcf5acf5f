import { type Ink, roundLines } from "./ink.ts";
import type { LiveMarks } from "./live-marks.ts";
import { drawLiveParts } from "./live-parts.ts";
import { drawLiveTerminals } from "./live-terminals.ts";
import { drawLiveWires, type StandingOfWire } from "./live-wires.ts";
import type { ScenePart, SceneWire } from "./scene.ts";

/** Draws what the analysis says on top of the drawing: one path per kind of mark however many there are. */
export function drawLive(
  ink: Ink,
  marks: LiveMarks,
  parts: readonly ScenePart[],
  wires: readonly SceneWire[],
  standingOfWire: StandingOfWire,
): void {
  if (marks.isNone) return;
  roundLines(ink);
  drawLiveWires(ink, marks, wires, standingOfWire);
  drawLiveParts(ink, marks, parts);
  drawLiveTerminals(ink, marks, parts);
}
