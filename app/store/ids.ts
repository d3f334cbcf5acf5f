import type { Document } from "../../core/document/index.ts";

/**
 * Short ids people can say aloud: the letter and the number after the highest one in use ("k3" after "k2"). `alsoTaken` are ids
 * about to be added.
 */
export function nextId(document: Document, letter: string, alsoTaken: readonly string[] = []): string {
  const pattern = new RegExp(`^${letter}(\\d{1,9})$`);
  let highest = 0;
  const look = (id: string) => {
    const number = pattern.exec(id)?.[1];
    if (number !== undefined) highest = Math.max(highest, Number(number));
  };
  for (const part of document.parts) look(part.id);
  for (const wire of document.wires) look(wire.id);
  alsoTaken.forEach(look);
  return `${letter}${highest + 1}`;
}
