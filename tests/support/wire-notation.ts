import type { Wire } from "../../core/document/index.ts";

type Note = { -readonly [K in keyof Wire]?: Wire[K] };

/** What stands between the brackets of `>(14 AWG, 3 m, sheathed, main=winch)>`, over the wire that `>` alone means. */
export function readWireNote(note: string): Note {
  const wire: Note = { size: "10 AWG", metres: 0.1 };
  for (const word of note.split(",").map((each) => each.trim())) {
    if (word === "") continue;
    const [, key, value] = /^(\w+)=(.*)$/.exec(word) ?? [];
    if (word === "? m") delete wire.metres;
    else if (word === "? AWG") delete wire.size;
    else if (key !== undefined)
      Object.assign(wire, { [key]: key === "label" ? unquoted(value ?? "") : readValue(value ?? "") });
    else if (/\b(?:AWG|mm2)$/.test(word)) wire.size = word;
    else if (/^[\d.]+ ?m$/.test(word)) wire.metres = Number.parseFloat(word);
    else if (word === "sheathed") wire.sheathed = true;
    else throw new RangeError(`circuit: got "${word}" on a wire, wanted a size, a length, "sheathed" or key=value`);
  }
  return wire;
}

/** A value as in a file: number, true, false, null, JSON, else the text itself. */
export function readValue(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}

/** A wire's number is a text, also where it is made of digits. */
function unquoted(text: string): string {
  return text.replace(/^"(.*)"$/, "$1");
}
