import { useMemo, useState } from "react";
import { useApp, useEditor } from "../app-context.tsx";
import { fileName, saveFile } from "../keeping/files.ts";
import { troublesOf } from "./check-symbol.ts";
import { changeSymbol, placeSymbol } from "./plans.ts";
import { symbolText } from "./symbol-file.ts";
import type { BenchWork } from "./use-bench.ts";

interface Props {
  readonly work: BenchWork;
  readonly onSay: (text: string) => void;
}

/** Where the symbol goes to: a file, the drawing, the Shelf. */
export function BenchGoals({ work, onSay }: Props) {
  const { symbol, subject } = work;
  const [isAsked, setAsked] = useState(false);
  const [refusal, setRefusal] = useState<string | null>(null);
  const { keep, putOnBoard, saveAsFile } = useGoals(work, setRefusal, onSay);
  const isOpen = useEditor((state) => state.access === "editing");
  const [first] = useMemo(() => troublesOf(symbol), [symbol]);
  const reason = symbol.name === "" ? "Give it a name first." : (first ?? null);
  const noBoard = reason ?? (isOpen ? null : "This drawing is open for editing in another tab.");
  const unless = (why: string | null, go: () => void) => () => {
    setAsked(why !== null);
    setRefusal(null);
    if (why === null) go();
  };
  const trouble = refusal ?? (isAsked ? noBoard : null);
  return (
    <div className="bench-goals">
      <div className="row-buttons">
        <button type="button" aria-disabled={reason !== null} onClick={unless(reason, () => void saveAsFile())}>
          Save as a file
        </button>
        <button type="button" aria-disabled={noBoard !== null} onClick={unless(noBoard, putOnBoard)}>
          {subject.from === "board" ? `Change ${subject.partId.toUpperCase()} on the drawing` : "Put on the Board"}
        </button>
        <button type="button" className="primary" onClick={unless(reason, () => void keep())}>
          {subject.from === "shelf" && !work.isChanged ? "Saved to My symbols" : "Save to My symbols"}
        </button>
      </div>
      {trouble !== null && (
        <p className="field-trouble" role="alert">
          {trouble}
        </p>
      )}
    </div>
  );
}

function useGoals(work: BenchWork, refuse: (text: string | null) => void, onSay: (text: string) => void) {
  const { editor, runner, symbols } = useApp();
  const { symbol, subject } = work;
  return {
    keep: async () => {
      const kept = await symbols.keep(symbol, subject.from === "shelf" ? subject.id : undefined);
      if ("error" in kept) return refuse(kept.error);
      // A part of the drawing stays what is worked on; the Shelf has a copy.
      if (subject.from !== "board") work.settle({ from: "shelf", id: kept.id });
      onSay(`${symbol.name} is on the Shelf, under My symbols`);
    },
    putOnBoard: () => {
      const plan =
        subject.from === "board"
          ? changeSymbol(editor.state, subject.partId, symbol)
          : placeSymbol(editor.state, symbol);
      if ("reason" in plan) return refuse(plan.reason);
      work.settle(subject);
      editor.show(null);
      runner.carryOut(plan);
    },
    saveAsFile: async () => {
      const name = fileName(symbol.name, "json");
      if (await saveFile({ name, media: "application/json", text: symbolText(symbol) })) onSay(`Saved as ${name}`);
    },
  };
}
