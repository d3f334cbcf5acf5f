import { useEffect, useState } from "react";
import { useStore } from "zustand";
import { useApp } from "../app-context.tsx";
import { documentOf } from "../store/editor-state.ts";
import { begin, changed, redone, undone, type BenchHistory } from "./history.ts";
import { isOwn } from "./own-kind.ts";
import type { KeptSymbol, Subject } from "./own-symbols.ts";
import { answersTo, BLANK_SYMBOL, symbolOnBoard, type BenchSymbol } from "./symbol.ts";

/** What lies on the Bench and how to change it. */
export interface BenchWork {
  readonly subject: Subject;
  readonly symbol: BenchSymbol;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly isChanged: boolean;
  change(symbol: BenchSymbol): void;
  undo(): void;
  redo(): void;
  /** Another subject comes on the Bench; the work on this one is kept. */
  take(subject: Subject, symbol: BenchSymbol): void;
  /** The work is kept somewhere now: under `subject` from here on. */
  settle(subject: Subject): void;
}

export function useBench(): BenchWork {
  const { editor, symbols } = useApp();
  const [{ subject, history }, setWork] = useState(() => firstWork(editor, symbols));
  useEffect(() => symbols.leave(subject, history), [symbols, subject, history]);
  useEffect(() => {
    // Another tab may have kept some meanwhile.
    void symbols.look();
    return () => symbols.want(null);
  }, [symbols]);
  const step = (to: (history: BenchHistory) => BenchHistory) =>
    setWork((work) => ({ ...work, history: to(work.history) }));
  return {
    subject,
    symbol: history.present,
    canUndo: history.past.length > 0,
    canRedo: history.future.length > 0,
    isChanged: history.present !== history.kept,
    change: (symbol) => step((before) => changed(before, symbol)),
    undo: () => step(undone),
    redo: () => step(redone),
    take: (next, symbol) => setWork({ subject: next, history: symbols.workOn(next, symbol) }),
    settle: (next) => {
      if (subject.from === "new" && next.from !== "new") symbols.leave(subject, begin(BLANK_SYMBOL));
      setWork((work) => ({ subject: next, history: { ...work.history, kept: work.history.present } }));
    },
  };
}

type Tools = ReturnType<typeof useApp>;

/** What was asked for; else the one selected part if it is an own one; else a new symbol. */
function firstWork(editor: Tools["editor"], symbols: Tools["symbols"]) {
  const { drawingId, selection } = editor.state;
  const parts = documentOf(editor.state).parts.filter(({ id }) => selection.has(id));
  const [only] = parts;
  const fromBoard: Subject | null =
    parts.length === 1 && only !== undefined && isOwn(only) ? { from: "board", drawingId, partId: only.id } : null;
  const subject = symbols.store.getState().wanted ?? fromBoard ?? { from: "new" };
  return { subject, history: symbols.workOn(subject, startOf(subject, editor, symbols)) };
}

function startOf(subject: Subject, editor: Tools["editor"], symbols: Tools["symbols"]): BenchSymbol {
  if (subject.from === "shelf")
    return symbols.store.getState().kept.find(({ id }) => id === subject.id)?.symbol ?? BLANK_SYMBOL;
  if (subject.from === "new") return BLANK_SYMBOL;
  const part = documentOf(editor.state).parts.find(({ id }) => id === subject.partId);
  return part === undefined ? BLANK_SYMBOL : symbolOnBoard(part);
}

/** Own symbols that answer to what was typed. */
export function useFoundSymbols(sought: string): readonly KeptSymbol[] {
  return useKeptSymbols().filter(({ symbol }) => answersTo(symbol, sought));
}

/** The person's own symbols as they are kept now. */
export function useKeptSymbols(): readonly KeptSymbol[] {
  return useStore(useApp().symbols.store, (state) => state.kept);
}
