import type { Note } from "../document/index.ts";
import { growBox, unionBox } from "../geometry/index.ts";
import { extentOf } from "./extent-of.ts";
import type { Lettering, PartPicture } from "./types.ts";

const SIZE = 0.65;
const LINE = 0.85;
/** So long a line still fits beside others on paper, where lettering has a least height. Letters. */
const LONGEST_LINE = 26;

/** By note object: documents are frozen and share unchanged notes. */
const drawn = new WeakMap<Note, PartPicture>();

/**
 * A note as it stands on the sheet: lettering alone, one piece a line, the first line's left end at the note's place; wires run across it. Lines
 * end where the person ended them and between words after 26 letters. The answer is shared: don't change it.
 */
export function notePicture(note: Note): PartPicture {
  let picture = drawn.get(note);
  if (picture === undefined) {
    const [x, y] = note.at;
    const lettering = linesOf(note.text).map((text, line): Lettering => ({
      at: [x, y + line * LINE],
      text,
      anchor: "start",
      size: SIZE,
      upright: false,
      role: "note",
    }));
    const box = growBox(lettering.map(extentOf).reduce(unionBox), 0.2);
    picture = { id: note.id, strokes: [], box, room: [], extent: box, lettering, terminals: [] };
    drawn.set(note, picture);
  }
  return picture;
}

function linesOf(text: string): string[] {
  return text.split("\n").flatMap((line) => {
    const lines = [""];
    for (const word of line.split(/\s+/)) {
      const grown = `${lines.at(-1)} ${word}`.trim();
      if (grown.length <= LONGEST_LINE || lines.at(-1) === "") lines[lines.length - 1] = grown;
      else lines.push(word);
    }
    return lines;
  });
}
