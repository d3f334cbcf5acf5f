/** Text on paper: cleaned, measured, cut and wrapped without a font at hand. Lengths in millimetres. */

/** 9 pt, the smallest lettering on any paper, rounded up: 9 / 72 · 25.4 = 3.175 mm. */
export const SMALLEST_MM = 3.2;
/** From one baseline to the next, in text sizes. */
export const LINE_PITCH = 1.32;
/** A baseline lies this far under the middle of capitals, in text sizes: half of Inter's cap height of 0.727 em. */
export const HALF_CAP = 0.36;

/** From the middle of capitals to the top of ascenders or the bottom of descenders, in text sizes: Inter fills 1.21 em. */
export const HALF_LINE = 0.61;

/**
 * Advance widths in 1/1000 em, from the space (32) to the tilde (126): the wider of Inter Regular 4.0 and DejaVu Sans 2.37, the
 * widest face a viewer without Inter is likely to take, so that lettering never needs more room than it was given.
 */
const ADVANCES =
  "318, 401, 466, 838, 642, 982, 780, 300, 390, 390, 501, 838, 318, 460, 318, 360, 636, 636, 636, 636, 646, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531, 1000, 690, 686, 730, 770, 632, 590, 775, 752, 295, 571, 672, 565, 903, 753, 787, 639, 787, 695, 642, 646, 744, 690, 989, 685, 679, 685, 390, 360, 390, 838, 500, 500, 613, 635, 571, 635, 615, 370, 635, 634, 278, 278, 579, 278, 974, 634, 612, 635, 635, 411, 528, 392, 634, 592, 818, 592, 592, 552, 636, 337, 636, 838"
    .split(", ")
    .map(Number);
/** The same of what our own words hold beyond that. */
const OTHER_ADVANCES = new Map(
  Object.entries({ "\u00a0": 318, "°": 500, "²": 442, "·": 318, "×": 838, Ω: 770, "−": 838, "…": 1000, "–": 500 }),
);
const UNKNOWN_ADVANCE = 1000;

/**
 * Text as it may stand on paper: one line, no control, surrogate-half or direction-override characters (each becomes a space
 * or U+FFFD), so that what is printed is what is in the file.
 */
export function cleanText(text: string): string {
  return text
    .toWellFormed()
    .replace(/(?:[^\S\u00a0]|[\u0000-\u001f\u007f-\u009f])+/g, " ")
    .replace(/[\u200b-\u200f\u202a-\u202e\u2060-\u206f\ufeff]/g, "")
    .replace(/[\ufffe\uffff]/g, "\ufffd")
    .trim();
}

/** Width in millimetres of cleaned `text` at `sizeMm`, on the generous side. */
export function textWidthMm(text: string, sizeMm: number): number {
  let advance = 0;
  for (const character of text) {
    advance += ADVANCES[character.codePointAt(0)! - 32] ?? OTHER_ADVANCES.get(character) ?? UNKNOWN_ADVANCE;
  }
  return (advance / 1000) * sizeMm;
}

/** `text` cleaned and, where it is wider than `widthMm`, cut with an ellipsis. Nothing fits: an empty string. */
export function fitText(text: string, sizeMm: number, widthMm: number): string {
  const clean = cleanText(text);
  if (textWidthMm(clean, sizeMm) <= widthMm) return clean;
  const head = longestHead(clean, sizeMm, widthMm - textWidthMm("…", sizeMm)).trimEnd();
  return head === "" && textWidthMm("…", sizeMm) > widthMm ? "" : `${head}…`;
}

/**
 * `text` cleaned and broken into lines of at most `widthMm`, between words where it can be, inside a word where it must; past
 * `mostLines` it is cut with an ellipsis. At least one line, which may be empty.
 */
export function wrapText(text: string, sizeMm: number, widthMm: number, mostLines = 8): string[] {
  const lines: string[] = [];
  let rest = cleanText(text);
  while (rest !== "" && lines.length < mostLines) {
    if (textWidthMm(rest.slice(0, 2000), sizeMm) <= widthMm) return [...lines, rest];
    if (lines.length === mostLines - 1) return [...lines, fitText(rest, sizeMm, widthMm)];
    const line = lineHead(rest, sizeMm, widthMm);
    lines.push(line.trimEnd());
    rest = rest.slice(line.length).trimStart();
  }
  return lines.length === 0 ? [""] : lines;
}

/** `text` with its spaces made unbreakable: a number stays with its unit, a pin with its part. */
export function unbroken(text: string): string {
  return text.replaceAll(" ", "\u00a0");
}

/** Width in millimetres of the widest single word of `text`. */
export function widestWordMm(text: string, sizeMm: number): number {
  return Math.max(
    0,
    ...cleanText(text)
      .slice(0, 2000)
      .split(" ")
      .map((word) => textWidthMm(word, sizeMm)),
  );
}

function lineHead(text: string, sizeMm: number, widthMm: number): string {
  const head = longestHead(text, sizeMm, widthMm) || String.fromCodePoint(text.codePointAt(0)!);
  if (head.length === text.length || text[head.length] === " ") return head;
  const space = head.lastIndexOf(" ");
  return space > 0 ? head.slice(0, space) : head;
}

function longestHead(text: string, sizeMm: number, widthMm: number): string {
  let length = 0;
  let width = 0;
  for (const character of text) {
    width += textWidthMm(character, sizeMm);
    if (width > widthMm) break;
    length += character.length;
  }
  return text.slice(0, length);
}
