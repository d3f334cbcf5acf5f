import { TextField } from "../fields/TextField.tsx";
import { isLetter, ownKind } from "./own-kind.ts";
import type { BenchSymbol } from "./symbol.ts";

interface Props {
  readonly symbol: BenchSymbol;
  readonly onChange: (symbol: BenchSymbol) => void;
}

/** What the symbol is called and how it is found. */
export function BenchAbout({ symbol, onChange }: Props) {
  return (
    <section className="bench-group" aria-label="Name">
      <h3>Name</h3>
      <TextField
        label="Name"
        value={symbol.name}
        placeholder="what the trade calls it"
        onCommit={(name) => {
          if (name.length > 60) return `Got ${name.length} letters, wanted up to 60`;
          onChange({ ...symbol, name });
          return null;
        }}
      />
      <TextField
        label="Search words"
        value={symbol.words}
        placeholder="other words for it"
        help="What else people may type to find it on the Shelf."
        onCommit={(words) => {
          if (words.length > 200) return `Got ${words.length} letters, wanted up to 200`;
          onChange({ ...symbol, words });
          return null;
        }}
      />
      <TextField
        label="Letter"
        value={symbol.letter.toUpperCase()}
        help="Parts of it are numbered with this: B makes B1, B2."
        onCommit={(typed) => {
          const letter = typed.toLowerCase() || ownKind.letter;
          if (!isLetter(letter)) return `Got "${typed.slice(0, 20)}", wanted one to three letters, not W`;
          onChange({ ...symbol, letter });
          return null;
        }}
      />
    </section>
  );
}
