import { writeFileSync } from "node:fs";
import { expect, it } from "vitest";
import type { Stroke } from "../../core/geometry/index.ts";
import {
  kindOf,
  markStrokes,
  partKinds,
  settingsOf,
  terminalsOf,
  type Mark,
  type Pose,
} from "../../core/parts/index.ts";

/**
 * Every symbol in every pose on one sheet, to be looked at by a person: `PROOF=sheet.svg npx vitest run -c tests/vitest.config.ts
 * tests/parts/proof-sheet.test.ts` writes it; without PROOF it only checks that each can be drawn.
 */
const STEP = 20;
const WEIGHTS = { thin: 0.036, normal: 0.07, thick: 0.14 };
const COLUMN = 9.5;
const COLUMNS = 5;

interface Sample {
  readonly kind: string;
  readonly props: Record<string, unknown>;
  readonly pose: Pose;
}

const sample = (kind: string, props: Record<string, unknown> = {}, pose: Pose = {}): Sample => ({ kind, props, pose });

const samples: readonly Sample[] = [
  sample("battery"),
  sample("battery", { chassisBondMilliohm: null, sensor: true, capacityAh: 100 }),
  sample("battery", { chassisBondMilliohm: 1 }),
  sample("factory-feed", { fuseA: 15 }),
  sample("factory-feed", {}, { position: "on" }),
  sample("converter", { outV: 13.8, maxA: 30 }),
  sample("fuse", { ratingA: 10 }),
  sample("fuse", { ratingA: 60, body: "bolt" }),
  sample("fuse", { ratingA: 10, fitted: false }),
  sample("breaker", { ratingA: 30 }),
  sample("breaker", { ratingA: 30, reset: "manual" }),
  sample("breaker", { ratingA: 30, reset: "held", closed: false }),
  sample("fuse-block", { ways: [{ ratingA: 10 }, { ratingA: 7.5 }, { ratingA: 20, fitted: false }, {}] }),
  sample("switch", { ratedA: 20 }),
  sample("switch", {}, { position: "on" }),
  sample("switch", { momentary: true }),
  sample("switch", { momentary: true }, { position: "on" }),
  sample("changeover-switch"),
  sample("changeover-switch", {}, { position: "1" }),
  sample("changeover-switch", {}, { position: "2" }),
  sample("key-switch"),
  sample("key-switch", {}, { position: "accessory" }),
  sample("key-switch", {}, { position: "on" }),
  sample("key-switch", {}, { position: "start" }),
  sample("relay"),
  sample("relay", {}, { pulledIn: true }),
  sample("relay", { contact: "changeover", suppression: "diode" }),
  sample("relay", { contact: "changeover", suppression: "resistor" }, { pulledIn: true }),
  sample("relay", { contact: "twin-make" }),
  sample("relay", { contact: "twin-make" }, { pulledIn: true }),
  sample("diode"),
  sample("lamp", { watts: 27 }),
  sample("lamp", { watts: 27 }, { on: true }),
  sample("lamp", { type: "filament", watts: 55 }),
  sample("lamp", { type: "filament", watts: 55 }, { on: true }),
  sample("load", { ohms: 2 }),
  sample("load", { model: "constant-power", watts: 120 }, { on: true }),
  sample("load", { model: "constant-current", amps: 4, polarised: false }),
  sample("motor", { watts: 96 }),
  sample("motor", { watts: 96 }, { on: true }),
  sample("resistor", { ohms: 6 }),
  sample("custom"),
  sample("chassis"),
  sample("chassis", { surface: "painted" }),
  sample("splice"),
  sample("splice", { tap: "piercing" }),
  sample("plug", { fedSide: "sockets" }),
  sample("plug", { fedSide: "pins", ways: 2 }),
  sample("bus-bar", { posts: 4 }),
  sample("ground-strip", { posts: 3 }),
];

it("draws every kind on the proof sheet", () => {
  const sheet = drawSheet();
  expect(new Set(samples.map(({ kind }) => kind)).size).toBe(partKinds.length);
  expect(sheet).not.toContain("NaN");
  const out = process.env["PROOF"];
  if (out) writeFileSync(out, sheet);
});

function drawSheet(): string {
  const pieces: string[] = [];
  let [x, y, rowHeight] = [0, 0, 0];
  samples.forEach(({ kind: name, props, pose }, at) => {
    const kind = kindOf(name)!;
    const part = { id: "p", kind: name, props };
    const settings = settingsOf(part);
    const bounds = kind.bounds(settings);
    if (at % COLUMNS === 0 && at > 0) {
      [x, y, rowHeight] = [0, y + rowHeight + 1, 0];
    }
    rowHeight = Math.max(rowHeight, bounds.bottom - bounds.top + 2.5);
    const left = x + 1.5 - Math.floor(bounds.left);
    const top = y + 2 - Math.floor(bounds.top);
    const caption = kind.caption(settings, { nominalV: 12, seriesUpper: false });
    pieces.push(`<g transform="translate(${left} ${top})">`);
    pieces.push(lettering(bounds.left, bounds.top - 0.9, `${kind.title}  ${caption}`, 0.45));
    pieces.push(...kind.symbol(settings, pose).map(drawStroke));
    pieces.push(
      ...terminalsOf(part).map(
        ({ at: [cx, cy] }) => `<circle cx="${cx}" cy="${cy}" r="0.1" fill="none" stroke="red" stroke-width="0.03"/>`,
      ),
    );
    pieces.push("</g>");
    x += COLUMN;
  });
  const marks: readonly Mark[] = ["always", "at-rest", "switched", "ground", "dead"];
  y += rowHeight + 2;
  marks.forEach((mark, at) => {
    for (const viaLoad of [false, true]) {
      pieces.push(
        `<g transform="translate(${2 + 3 * at} ${y + (viaLoad ? 1.5 : 0)})">${markStrokes(mark, viaLoad).map(drawStroke).join("")}</g>`,
      );
    }
  });
  const [width, height] = [COLUMNS * COLUMN, y + 3];
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width * STEP}" height="${height * STEP}" viewBox="0 0 ${width} ${height}">
<rect width="100%" height="100%" fill="white"/>${grid(width, height)}${pieces.join("\n")}</svg>`;
}

function grid(width: number, height: number): string {
  const dots: string[] = [];
  for (let x = 0.5; x < width; x++) for (let y = 0; y < height; y++) dots.push(`M${x} ${y}h0.02`);
  return `<path d="${dots.join("")}" stroke="#ccc" stroke-width="0.06"/>`;
}

function drawStroke(stroke: Stroke): string {
  if (stroke.shape === "text") return lettering(...stroke.centre, stroke.text, stroke.size, stroke.anchor ?? "middle");
  const fill = "fill" in stroke && stroke.fill ? "black" : "none";
  const pen = `fill="${fill}" stroke="black" stroke-width="${WEIGHTS[stroke.weight ?? "normal"]}" stroke-linecap="round" stroke-linejoin="round"`;
  if (stroke.shape === "circle")
    return `<circle cx="${stroke.centre[0]}" cy="${stroke.centre[1]}" r="${stroke.radius}" ${pen}/>`;
  if (stroke.shape === "line") {
    const dash = stroke.dash ? ` stroke-dasharray="0.2 0.15"` : "";
    return `<${stroke.closed ? "polygon" : "polyline"} points="${stroke.points.map((p) => p.join()).join(" ")}" ${pen}${dash}/>`;
  }
  const at = (degrees: number) => {
    const angle = (degrees * Math.PI) / 180;
    return `${stroke.centre[0] + stroke.radius * Math.cos(angle)} ${stroke.centre[1] + stroke.radius * Math.sin(angle)}`;
  };
  const sweep = (((stroke.end - stroke.start) % 360) + 360) % 360;
  return `<path d="M${at(stroke.start)}A${stroke.radius} ${stroke.radius} 0 ${sweep > 180 ? 1 : 0} 1 ${at(stroke.end)}" ${pen}/>`;
}

function lettering(x: number, y: number, text: string, size: number, anchor = "start"): string {
  return `<text x="${x}" y="${y}" font-family="DejaVu Sans, Arial" font-size="${size}" text-anchor="${anchor}" dominant-baseline="central">${text}</text>`;
}
