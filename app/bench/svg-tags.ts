/** A tag of an SVG text, in the order of the text. Only names and attributes: what it holds between tags is `text`. */
export interface SvgTag {
  readonly type: "open" | "close" | "text";
  /** Without a prefix, lower case; "" for text. */
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly isEmpty: boolean;
  readonly text: string;
}

/** The longest text read, and the most tags and attributes of one tag taken from it. */
export const MOST_LETTERS = 1_000_000;
const MOST_TAGS = 20_000;
const MOST_ATTRIBUTES = 60;

const NONE: ReadonlyMap<string, string> = new Map();
const ENTITIES: Readonly<Record<string, string>> = { lt: "<", gt: ">", amp: "&", quot: '"', apos: "'" };

/**
 * Takes a text apart into tags in one pass, left to right, without looking back: comments, declarations and instructions are
 * passed over, entities of a document's own are never followed. Anything may be handed in; time grows with its length alone.
 */
export function* svgTags(svg: string): Generator<SvgTag> {
  const text = svg.slice(0, MOST_LETTERS);
  let at = 0;
  for (let count = 0; at < text.length && count < MOST_TAGS; count += 1) {
    const start = text.indexOf("<", at);
    const words = text.slice(at, start < 0 ? undefined : start);
    if (words.trim() !== "") yield { type: "text", name: "", attributes: NONE, isEmpty: true, text: plainText(words) };
    if (start < 0) return;
    const passed = passedOver(text, start);
    if (passed !== null) {
      at = passed;
      continue;
    }
    const end = endOfTag(text, start + 1);
    if (end < 0) return;
    const tag = tagOf(text.slice(start + 1, end));
    if (tag !== null) yield tag;
    at = end + 1;
  }
}

/** Where a comment, CDATA, declaration or instruction ends; `null` when none starts here. */
function passedOver(text: string, start: number): number | null {
  const endAfter = (mark: string) => {
    const end = text.indexOf(mark, start);
    return end < 0 ? text.length : end + mark.length;
  };
  if (text.startsWith("<!--", start)) return endAfter("-->");
  if (text.startsWith("<![CDATA[", start)) return endAfter("]]>");
  if (text.startsWith("<?", start)) return endAfter("?>");
  if (text.startsWith("<!", start)) return endAfter(">");
  return null;
}

/** The closing sign outside of quotes; -1 when the text ends first. */
function endOfTag(text: string, from: number): number {
  let quote = "";
  for (let at = from; at < text.length; at += 1) {
    const letter = text[at]!;
    if (quote !== "") quote = letter === quote ? "" : quote;
    else if (letter === '"' || letter === "'") quote = letter;
    else if (letter === ">") return at;
  }
  return -1;
}

function tagOf(inner: string): SvgTag | null {
  const [, slash = "", written = ""] = /^(\/?)\s*([A-Za-z][\w:.-]{0,60})/.exec(inner) ?? [];
  if (written === "") return null;
  const name = localName(written);
  if (slash !== "") return { type: "close", name, attributes: NONE, isEmpty: false, text: "" };
  const attributes = new Map<string, string>();
  for (const [, key = "", double, single] of inner.matchAll(/([A-Za-z_][\w:.-]*)\s*=\s*(?:"([^"]*)"|'([^']*)')/g)) {
    if (attributes.size >= MOST_ATTRIBUTES) break;
    attributes.set(key.toLowerCase(), plainText(double ?? single ?? ""));
  }
  return { type: "open", name, attributes, isEmpty: inner.trimEnd().endsWith("/"), text: "" };
}

function localName(written: string): string {
  return written.slice(written.indexOf(":") + 1).toLowerCase();
}

function plainText(text: string): string {
  return text.replace(/&(lt|gt|amp|quot|apos);/g, (_all, name: string) => ENTITIES[name] ?? "");
}
