import { elementTitle, endsOf, placeOf } from "./behaviour.ts";
import type { BenchSymbol } from "./symbol.ts";
import { whyNoFile } from "./symbol-file.ts";

/** What keeps the symbol from being used, a sentence each; empty: nothing. */
export function troublesOf(symbol: BenchSymbol): readonly string[] {
  const troubles = [...terminalTroubles(symbol), ...elementTroubles(symbol)];
  if (troubles.length > 0) return troubles;
  const refused = whyNoFile(symbol);
  return refused === null ? [] : [`This can't be kept in a file: ${refused}`];
}

function terminalTroubles({ terminals }: BenchSymbol): string[] {
  if (terminals.length === 0) return ["It has no terminal yet: take the Terminal pen and press where a wire goes."];
  return terminals.flatMap(({ name, at }, index) => {
    const before = terminals.slice(0, index);
    if (before.some((other) => other.name === name))
      return [`Two terminals are called ${name}: give one another name.`];
    const there = before.find((other) => other.at[0] === at[0] && other.at[1] === at[1]);
    return there ? [`Terminals ${there.name} and ${name} lie on each other: move one.`] : [];
  });
}

function elementTroubles(symbol: BenchSymbol): string[] {
  const names = new Set(symbol.terminals.map(({ name }) => name));
  return symbol.elements.flatMap((element, index) => {
    const title = `${elementTitle(element)} (${index + 1})`;
    const ends = endsOf(element).map(([name, words]) => ({ words, place: placeOf(element, name) }));
    const loose = ends.find(({ place }) => place === "");
    if (loose) return [`${title}: say where its ${loose.words.toLowerCase()} goes.`];
    const gone = ends.find(({ place }) => !place.startsWith("$") && !names.has(place));
    if (gone) return [`${title}: its ${gone.words.toLowerCase()} is on terminal ${gone.place}, which is not there.`];
    if (ends.length === 2 && ends[0]!.place === ends[1]!.place) return [`${title}: both its ends are in one place.`];
    if (element.coil === "") return [`${title}: say what moves it.`];
    return [];
  });
}
