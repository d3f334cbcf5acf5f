/** A strict little XML reader for tests: throws at anything that is not well formed, so that a paper which any viewer would choke on fails. */
export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly XmlElement[];
  /** Character data of this element itself, entities resolved. */
  readonly text: string;
}

interface Open {
  name: string;
  attributes: Record<string, string>;
  children: XmlElement[];
  text: string;
}

const NAME = "[A-Za-z_][\\w.-]*(?::[A-Za-z_][\\w.-]*)?";
const OPENING = new RegExp(`^<(${NAME})((?:\\s+${NAME}="[^"<]*")*)\\s*(/?)>`);
const CLOSING = new RegExp(`^</(${NAME})\\s*>`);
const ATTRIBUTE = new RegExp(`(${NAME})="([^"<]*)"`, "g");
/** XML 1.0, production 2. */
const ILLEGAL = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/u;

export function parseXml(source: string): XmlElement {
  if (ILLEGAL.test(source))
    throw new Error(`illegal character U+${ILLEGAL.exec(source)![0].codePointAt(0)!.toString(16)}`);
  const root: Open = { name: "", attributes: {}, children: [], text: "" };
  const stack = [root];
  let rest = source;
  while (rest !== "") {
    const parent = stack.at(-1)!;
    if (rest[0] !== "<") {
      const length = rest.includes("<") ? rest.indexOf("<") : rest.length;
      parent.text += resolved(rest.slice(0, length));
      rest = rest.slice(length);
      continue;
    }
    const closing = CLOSING.exec(rest);
    const opening = OPENING.exec(rest);
    if (closing) {
      if (parent.name !== closing[1]) throw new Error(`</${closing[1]}> closes <${parent.name}>`);
      stack.pop();
    } else if (opening) {
      const element: Open = { name: opening[1]!, attributes: attributesOf(opening[2]!), children: [], text: "" };
      parent.children.push(element);
      if (opening[3] === "") stack.push(element);
    } else throw new Error(`not markup: ${rest.slice(0, 60)}`);
    rest = rest.slice((closing ?? opening)![0].length);
  }
  if (stack.length !== 1 || root.children.length !== 1 || root.text.trim() !== "")
    throw new Error("not one closed root element");
  return root.children[0]!;
}

/** The element and all below it. */
export function everyElement(element: XmlElement): XmlElement[] {
  return [element, ...element.children.flatMap(everyElement)];
}

function attributesOf(source: string): Record<string, string> {
  const attributes: Record<string, string> = {};
  for (const [, name = "", value = ""] of source.matchAll(ATTRIBUTE)) {
    if (name in attributes) throw new Error(`attribute ${name} twice`);
    attributes[name] = resolved(value);
  }
  return attributes;
}

function resolved(text: string): string {
  if (text.includes("]]>")) throw new Error("]]> in character data");
  return text.replace(
    /&(?:#(\d+);|#x([0-9a-fA-F]+);|(lt|gt|amp|quot|apos);|)/g,
    (whole, decimal?: string, hex?: string, name?: string) => {
      if (whole === "&") throw new Error("bare & in character data");
      if (name) return { lt: "<", gt: ">", amp: "&", quot: '"', apos: "'" }[name]!;
      const character = String.fromCodePoint(decimal ? Number(decimal) : Number.parseInt(hex!, 16));
      if (ILLEGAL.test(character)) throw new Error(`reference to an illegal character: ${whole}`);
      return character;
    },
  );
}
