import { useState } from "react";
import { Glyph } from "../panels/Glyph.tsx";
import { PasteSvg } from "./PasteSvg.tsx";
import { BLANK_SYMBOL } from "./symbol.ts";
import type { BenchWork } from "./use-bench.ts";

interface Props {
  readonly work: BenchWork;
  readonly onSay: (text: string) => void;
  /** Something else lies on the Bench: pens start anew. */
  readonly onNewHand: () => void;
}

/** Undo and redo, a new symbol, and a picture to start from. */
export function BenchSources({ work, onSay, onNewHand }: Props) {
  const [isPasting, setPasting] = useState(false);
  const isNew = work.subject.from === "new" && !work.isChanged;
  const startNew = () => {
    work.take({ from: "new" }, BLANK_SYMBOL);
    onNewHand();
    onSay("A new symbol");
  };
  return (
    <>
      <div className="row-buttons bench-sources">
        <button type="button" aria-label="Undo" title="Undo" aria-disabled={!work.canUndo} onClick={work.undo}>
          <Glyph name="undo" />
        </button>
        <button type="button" aria-label="Redo" title="Redo" aria-disabled={!work.canRedo} onClick={work.redo}>
          <Glyph name="redo" />
        </button>
        <button type="button" onClick={startNew} aria-disabled={isNew}>
          New symbol
        </button>
        <button type="button" aria-expanded={isPasting} onClick={() => setPasting(!isPasting)}>
          Paste an SVG
        </button>
      </div>
      {isPasting && (
        <PasteSvg
          symbol={work.symbol}
          onDone={(changed, words) => {
            setPasting(false);
            if (changed !== null) work.change(changed);
            onSay(words);
          }}
        />
      )}
    </>
  );
}
