import type { BenchSymbol } from "./symbol.ts";

/** The symbol on the Bench, what can be undone, and how it stood when it was last saved or put on the Board. */
export interface BenchHistory {
  readonly past: readonly BenchSymbol[];
  readonly present: BenchSymbol;
  readonly future: readonly BenchSymbol[];
  readonly kept: BenchSymbol;
}

const MOST_STEPS = 200;

export function begin(symbol: BenchSymbol): BenchHistory {
  return { past: [], present: symbol, future: [], kept: symbol };
}

/** One step on; the same symbol again is none. */
export function changed(history: BenchHistory, symbol: BenchSymbol): BenchHistory {
  if (symbol === history.present) return history;
  return { ...history, past: [...history.past, history.present].slice(-MOST_STEPS), present: symbol, future: [] };
}

export function undone(history: BenchHistory): BenchHistory {
  const before = history.past.at(-1);
  if (before === undefined) return history;
  return {
    ...history,
    past: history.past.slice(0, -1),
    present: before,
    future: [...history.future, history.present],
  };
}

export function redone(history: BenchHistory): BenchHistory {
  const after = history.future.at(-1);
  if (after === undefined) return history;
  return { ...history, past: [...history.past, history.present], present: after, future: history.future.slice(0, -1) };
}
