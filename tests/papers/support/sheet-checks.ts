import { textWidthMm } from "../../../core/papers/layout/index.ts";
import { everyElement, parseXml, type XmlElement } from "./xml.ts";

export interface TextOnPaper {
  readonly text: string;
  readonly sizeMm: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const PLAIN = ["svg", "title", "metadata", "gs:circuit", "rect", "path", "circle", "text"];
const NINE_POINT_MM = (9 / 72) * 25.4;

/** Text of a page with the room it takes: from the top of its capitals to the bottom of its descenders. */
export function textsOf(svg: string): TextOnPaper[] {
  return everyElement(parseXml(svg))
    .filter(({ name }) => name === "text")
    .map(boxed);
}

export interface PageSize {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** What is wrong with a page of any paper, one sentence each: size, markup that is more than drawing, lettering too small, off the page or over other lettering. */
export function troubleOnPages(pages: readonly string[], size: PageSize): string[] {
  return pages.flatMap((svg, at) => troubleOnPage(svg, size).map((trouble) => `page ${at + 1}: ${trouble}`));
}

function troubleOnPage(svg: string, size: PageSize): string[] {
  const root = parseXml(svg);
  const elements = everyElement(root);
  const texts = textsOf(svg);
  return [
    ...sizeTrouble(root, size),
    ...elements.filter(({ name }) => !PLAIN.includes(name)).map(({ name }) => `<${name}>`),
    ...elements
      .flatMap(({ attributes }) => Object.keys(attributes))
      .filter((name) => /^on|href|style|class/i.test(name))
      .map((name) => `attribute ${name}`),
    ...texts.filter(({ sizeMm }) => sizeMm < NINE_POINT_MM).map(({ text, sizeMm }) => `"${text}" is ${sizeMm} mm high`),
    ...texts.filter((text) => !isInside(text, size)).map(({ text }) => `"${text}" leaves the safe area`),
    ...overlapsOf(texts),
  ];
}

function sizeTrouble({ attributes }: XmlElement, { widthMm, heightMm }: PageSize): string[] {
  const wanted = { width: `${widthMm}mm`, height: `${heightMm}mm`, viewBox: `0 0 ${widthMm} ${heightMm}` };
  return Object.entries(wanted)
    .filter(([name, value]) => attributes[name] !== value)
    .map(([name, value]) => `${name} is ${attributes[name]}, not ${value}`);
}

function isInside({ left, right, top, bottom }: TextOnPaper, { widthMm, heightMm }: PageSize): boolean {
  const margin = 10 - 1e-6;
  return left >= margin && right <= widthMm - margin && top >= margin && bottom <= heightMm - margin;
}

function overlapsOf(texts: readonly TextOnPaper[]): string[] {
  return texts.flatMap((a, at) =>
    texts
      .slice(at + 1)
      .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
      .map((b) => `"${a.text}" over "${b.text}"`),
  );
}

function boxed({ attributes, text }: XmlElement): TextOnPaper {
  const [x, y, sizeMm] = ["x", "y", "font-size"].map((name) => Number(attributes[name])) as [number, number, number];
  const width = textWidthMm(text, sizeMm);
  const before = { start: 0, middle: width / 2, end: width }[attributes["text-anchor"] ?? "start"]!;
  const [over, under] = [0.76 * sizeMm, 0.22 * sizeMm];
  if (!attributes["transform"])
    return { text, sizeMm, left: x - before, right: x - before + width, top: y - over, bottom: y + under };
  if (attributes["transform"] !== `rotate(-90 ${attributes["x"]} ${attributes["y"]})`)
    throw new Error(attributes["transform"]);
  return { text, sizeMm, left: x - over, right: x + under, top: y - (width - before), bottom: y + before };
}
