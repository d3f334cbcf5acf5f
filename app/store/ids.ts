import type { Document } from "../../core/document/index.ts";

/**
 * Gives short ids people can say aloud: the letter and the number after the highest one in use ("k3" after "k2"). Each call counts
 * on, so ids for several new things at once differ. `alsoTaken`: ids about to be added.
 */
export function idSource(document: Document, alsoTaken: readonly string[] = []): (letter: string) => string {
  const highest = new Map<string, number>();
  const taken = [...document.parts, ...document.wires, ...(document.notes ?? [])].map((thing) => thing.id);
  for (const id of [...taken, ...alsoTaken]) {
    const [, letter, number] = /^([a-z]+)(\d{1,9})$/.exec(id) ?? [];
    if (letter !== undefined) highest.set(letter, Math.max(highest.get(letter) ?? 0, Number(number)));
  }
  return (letter) => {
    const number = (highest.get(letter) ?? 0) + 1;
    highest.set(letter, number);
    return `${letter}${number}`;
  };
}

/** The one next id for this letter. */
export function nextId(document: Document, letter: string, alsoTaken: readonly string[] = []): string {
  return idSource(document, alsoTaken)(letter);
}
