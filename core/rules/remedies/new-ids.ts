import type { Document } from "../../document/index.ts";

const kept = new WeakMap<Document, ReadonlySet<string>>();

function idsOf(document: Document): ReadonlySet<string> {
  let ids = kept.get(document);
  if (!ids) {
    ids = new Set([...document.parts, ...document.wires].map(({ id }) => id));
    kept.set(document, ids);
  }
  return ids;
}

/** Hands out ids nobody uses yet: the letter and the first free number, never the same one twice. */
export class NewIds {
  private readonly taken: ReadonlySet<string>;
  private readonly given = new Set<string>();

  constructor(document: Document) {
    this.taken = idsOf(document);
  }

  /** "f3" after f1 and f2. */
  next(letter: string): string {
    let number = 1;
    while (this.taken.has(`${letter}${number}`) || this.given.has(`${letter}${number}`)) number++;
    this.given.add(`${letter}${number}`);
    return `${letter}${number}`;
  }
}
