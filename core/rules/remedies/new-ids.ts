import type { Document } from "../../document/index.ts";

/** Hands out ids nobody uses yet: the letter and the first free number, never the same one twice. */
export class NewIds {
  private readonly taken: Set<string>;

  constructor({ parts, wires }: Document) {
    this.taken = new Set([...parts, ...wires].map(({ id }) => id));
  }

  /** "f3" after f1 and f2. */
  next(letter: string): string {
    let number = 1;
    while (this.taken.has(`${letter}${number}`)) number++;
    this.taken.add(`${letter}${number}`);
    return `${letter}${number}`;
  }
}
