import { useState } from "react";
import { useApp } from "../app-context.tsx";
import { pickFile, readDrawing } from "../keeping/files.ts";
import { SymbolPicture } from "../panels/SymbolPicture.tsx";
import { viewOf } from "../store/part-view.ts";
import type { KeptSymbol } from "./own-symbols.ts";
import { BLANK_SYMBOL, partOf } from "./symbol.ts";
import { symbolsIn } from "./symbol-file.ts";
import { useKeptSymbols, type BenchWork } from "./use-bench.ts";

interface Props {
  readonly work: BenchWork;
  readonly onSay: (text: string) => void;
  readonly onNewHand: () => void;
}

const MOST = { width: 56, height: 40 };

/** The symbols on the Shelf: to work on again, to take off, to fetch from a file. */
export function MySymbols({ work, onSay, onNewHand }: Props) {
  const { symbols } = useApp();
  const kept = useKeptSymbols();
  const [removed, setRemoved] = useState<KeptSymbol | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const open = ({ id, symbol }: KeptSymbol) => {
    work.take({ from: "shelf", id }, symbol);
    onNewHand();
    onSay(`${symbol.name} is on the Bench`);
  };
  const remove = async (one: KeptSymbol) => {
    await symbols.remove(one.id);
    setRemoved(one);
    onSay(`${one.symbol.name} is off the Shelf`);
    if (work.subject.from === "shelf" && work.subject.id === one.id) work.take({ from: "new" }, BLANK_SYMBOL);
  };
  const fetchFile = async () => {
    const got = await symbolsFromFile();
    if (got === null) return;
    if ("error" in got) return setTrouble(got.error);
    for (const symbol of got) {
      const outcome = await symbols.keep(symbol);
      if ("error" in outcome) return setTrouble(outcome.error);
      open({ id: outcome.id, symbol });
    }
    setTrouble(null);
  };
  return (
    <section className="bench-group" aria-label="My symbols">
      <h3>My symbols</h3>
      {kept.length === 0 && <p className="quiet">None on the Shelf yet.</p>}
      <ul className="bench-list">
        {kept.map((one) => (
          <KeptRow key={one.id} kept={one} onOpen={() => open(one)} onRemove={() => void remove(one)} />
        ))}
      </ul>
      <p className="row-buttons">
        <button type="button" onClick={() => void fetchFile()}>
          From a file
        </button>
        {removed !== null && (
          <button
            type="button"
            onClick={() => {
              void symbols.keep(removed.symbol, removed.id);
              setRemoved(null);
            }}
          >
            Bring {removed.symbol.name} back
          </button>
        )}
      </p>
      {trouble !== null && (
        <p className="field-trouble" role="alert">
          {trouble}
        </p>
      )}
    </section>
  );
}

interface RowProps {
  readonly kept: KeptSymbol;
  readonly onOpen: () => void;
  readonly onRemove: () => void;
}

function KeptRow({ kept: { symbol }, onOpen, onRemove }: RowProps) {
  return (
    <li className="bench-kept">
      <span className="card-picture">
        <SymbolPicture view={viewOf(partOf(symbol, "own"))} most={MOST} />
      </span>
      <strong>{symbol.name}</strong>
      <button type="button" aria-label={`Open ${symbol.name}`} onClick={onOpen}>
        Open
      </button>
      <button type="button" aria-label={`Take ${symbol.name} off the Shelf`} onClick={onRemove}>
        Take off
      </button>
    </li>
  );
}

/** `null`: the person thought better of it. */
async function symbolsFromFile() {
  const file = await pickFile();
  if (file === null) return null;
  const read = await readDrawing(file);
  if ("error" in read) return read;
  const found = symbolsIn(read.document);
  return found.length > 0 ? found : { error: `"${file.name}" holds no symbol made on a Bench.` };
}
