import type { Point } from "../../geometry/index.ts";
import { cleanText, HALF_CAP, SMALLEST_MM } from "./lettering.ts";
import type { Sheet } from "./sheet.ts";

/**
 * Marks on paper as SVG text, in millimetres. Only presentation attributes that every viewer and PDF converter knows: no
 * styles, scripts, fonts, foreign objects or references; each piece of text stands at its own x and baseline y.
 */

/** Line weights in millimetres; none so thin that a copier loses it. */
export const RULE_MM = { thin: 0.18, normal: 0.35, thick: 0.7, heavy: 1.1 } as const;

const FACE = "Inter, Arial, Helvetica, sans-serif";

export interface TextStyle {
  /** Height in millimetres; never under 9 pt. */
  readonly size?: number;
  readonly anchor?: "start" | "middle" | "end";
  /** Reads upwards. */
  readonly upright?: boolean;
  readonly white?: boolean;
}

export interface LineStyle {
  readonly widthMm?: number;
  /** On and off lengths in millimetres. */
  readonly dash?: readonly number[];
  readonly fill?: "none" | "black" | "white";
  /** Drawn over black to break it up. */
  readonly white?: boolean;
  readonly closed?: boolean;
  readonly round?: boolean;
}

/** A number as SVG writes it: at most three decimals, no exponent, no negative zero. */
export function mm(value: number): string {
  const text = value.toFixed(3).replace(/\.?0+$/, "");
  return text === "-0" ? "0" : text;
}

/** Text safe inside an element or a quoted attribute, whatever a person typed. */
export function escapeXml(text: string): string {
  return cleanText(text.replaceAll("\u00a0", " ")).replace(/[&<>"']/g, (character) => `&#${character.charCodeAt(0)};`);
}

/** One line of text whose capitals are centred on `y`. Nothing to say: nothing drawn. */
export function inkText(x: number, y: number, text: string, style: TextStyle = {}): string {
  const clean = escapeXml(text);
  if (clean === "") return "";
  const size = Math.max(style.size ?? SMALLEST_MM, SMALLEST_MM);
  const shift = HALF_CAP * size;
  const [baseX, baseY] = style.upright ? [x + shift, y] : [x, y + shift];
  const anchor = style.anchor && style.anchor !== "start" ? ` text-anchor="${style.anchor}"` : "";
  const turn = style.upright ? ` transform="rotate(-90 ${mm(baseX)} ${mm(baseY)})"` : "";
  const colour = style.white ? ` fill="#fff"` : "";
  return `<text x="${mm(baseX)}" y="${mm(baseY)}" font-size="${mm(size)}"${anchor}${colour}${turn}>${clean}</text>`;
}

/** A line through points. */
export function inkLine(points: readonly Point[], style: LineStyle = {}): string {
  const [first, ...rest] = points;
  if (!first || rest.length === 0) return "";
  const d = `M${pair(first)}L${rest.map(pair).join(" ")}${style.closed ? "Z" : ""}`;
  return inkPath(d, style);
}

/** Any path, `d` in millimetres. */
export function inkPath(d: string, style: LineStyle = {}): string {
  const dash = style.dash ? ` stroke-dasharray="${style.dash.map(mm).join(" ")}"` : "";
  const caps = style.round ? ` stroke-linecap="round" stroke-linejoin="round"` : "";
  return `<path d="${d}" fill="${fillColour(style)}" stroke="${style.white ? "#fff" : "#000"}" stroke-width="${mm(style.widthMm ?? RULE_MM.normal)}"${dash}${caps}/>`;
}

/** A black shape without an edge, `d` in millimetres. */
export function inkShape(d: string): string {
  return `<path d="${d}" fill="#000"/>`;
}

export function inkCircle(centre: Point, radius: number, style: LineStyle = {}): string {
  return `<circle cx="${mm(centre[0])}" cy="${mm(centre[1])}" r="${mm(radius)}" fill="${fillColour(style)}" stroke="#000" stroke-width="${mm(style.widthMm ?? RULE_MM.normal)}"/>`;
}

export function inkBox(x: number, y: number, width: number, height: number, style: LineStyle = {}): string {
  const stroke = style.widthMm === 0 ? "" : ` stroke="#000" stroke-width="${mm(style.widthMm ?? RULE_MM.normal)}"`;
  return `<rect x="${mm(x)}" y="${mm(y)}" width="${mm(width)}" height="${mm(height)}" fill="${fillColour(style)}"${stroke}/>`;
}

/** A whole SVG file of true size. `metadata` is put in as it is: the caller vouches for it. */
export function inkSheet(sheet: Sheet, title: string, ink: readonly string[], metadata = ""): string {
  const size = `width="${mm(sheet.widthMm)}mm" height="${mm(sheet.heightMm)}mm" viewBox="0 0 ${mm(sheet.widthMm)} ${mm(sheet.heightMm)}"`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" version="1.1" ${size} font-family="${FACE}" fill="#000">`,
    `<title>${escapeXml(title)}</title>`,
    ...(metadata === "" ? [] : [metadata]),
    `<rect width="${mm(sheet.widthMm)}" height="${mm(sheet.heightMm)}" fill="#fff"/>`,
    ...ink.filter((piece) => piece !== ""),
    "</svg>",
    "",
  ].join("\n");
}

function pair(point: Point): string {
  return `${mm(point[0])} ${mm(point[1])}`;
}

function fillColour(style: LineStyle): string {
  if (style.fill === "black") return "#000";
  return style.fill === "white" ? "#fff" : "none";
}
