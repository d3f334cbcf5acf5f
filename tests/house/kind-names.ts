/** Kinds whose name is also a word of the elements they are made of; these count only where a kind is spoken of. */
const SHARED_WORDS = ["diode", "load", "converter", "lamp", "motor", "resistor"];

/** Where a file asks which kind a part is or names one, a sentence each. */
export function kindNamesIn(path: string, text: string, kinds: readonly string[]): string[] {
  const code = text
    .replace(/\/\*[\s\S]*?\*\//g, (comment) => comment.replace(/[^\n]/g, " "))
    .replace(/^\s*\/\/.*$/gm, "");
  return code.split("\n").flatMap((line, at) => {
    const place = `${path}:${at + 1}`;
    if (/\bswitch\s*\([^)]*\bkind\b/i.test(line))
      return [`${place} switches on the kind; let the kinds declare the answer as a property`];
    return [...line.matchAll(/(["'`])([a-z-]+)\1/g)]
      .filter(({ 2: word = "", index }) => kinds.includes(word) && !isProse(line.slice(0, index)))
      .filter(({ 2: word = "" }) => !SHARED_WORDS.includes(word) || /\bkinds?\b/i.test(line))
      .map(
        ({ 2: word }) =>
          `${place} names the kind "${word}"; let core/parts declare what is needed as a property or a constant`,
      );
  });
}

/** In the text of an element, as in `<p>Try "fuse"`, or the name of an ARIA role. */
function isProse(before: string): boolean {
  return /<\w[^>]*>[^<{]*$/.test(before) || /\brole=$/.test(before);
}
