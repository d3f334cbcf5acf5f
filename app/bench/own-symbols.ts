import { createStore, type StoreApi } from "zustand/vanilla";
import type { KeyValue } from "../keeping/key-value.ts";
import { begin, type BenchHistory } from "./history.ts";
import type { BenchSymbol } from "./symbol.ts";
import { symbolsInText, symbolText } from "./symbol-file.ts";

export interface KeptSymbol {
  readonly id: string;
  readonly symbol: BenchSymbol;
}

/** What the Bench works on: a new symbol, one from the Shelf, or a part of the drawing. */
export type Subject =
  | { readonly from: "new" }
  | { readonly from: "shelf"; readonly id: string }
  | { readonly from: "board"; readonly drawingId: string; readonly partId: string };

interface OwnSymbolsState {
  /** In the order of their names. */
  readonly kept: readonly KeptSymbol[];
  /** What was asked to be opened; `null`: the selected part if it is an own one, else a new symbol. */
  readonly wanted: Subject | null;
  /** Work not finished, by subject: leaving the Bench loses nothing until the page is closed. */
  readonly drafts: Readonly<Record<string, BenchHistory>>;
}

interface Ports {
  readonly kept: KeyValue;
  readonly newId: () => string;
}

const KEY = "symbol ";

/** The person's own symbols, kept in this browser beside the drawings, and what lies on the Bench. */
export class OwnSymbols {
  readonly store: StoreApi<OwnSymbolsState> = createStore(() => ({ kept: [], wanted: null, drafts: {} }));
  readonly #ports: Ports;

  constructor(ports: Ports) {
    this.#ports = ports;
  }

  /** Reads what is kept. What can't be read is left where it is and not shown. */
  async look(): Promise<void> {
    const all = await this.#ports.kept.all().catch(() => []);
    const kept = all.flatMap(([key, value]): KeptSymbol[] => {
      if (typeof key !== "string" || !key.startsWith(KEY) || typeof value !== "string") return [];
      const read = symbolsInText(value);
      const [symbol] = "error" in read ? [] : read;
      return symbol === undefined ? [] : [{ id: key.slice(KEY.length), symbol }];
    });
    this.store.setState({ kept: kept.toSorted((a, b) => a.symbol.name.localeCompare(b.symbol.name)) });
  }

  /** Keeps it under its id, or a new one; the id, or why the browser refuses. */
  async keep(
    symbol: BenchSymbol,
    id = this.#ports.newId(),
  ): Promise<{ readonly id: string } | { readonly error: string }> {
    try {
      await this.#ports.kept.update(KEY + id, () => symbolText(symbol));
    } catch {
      return { error: "The browser does not keep it: save it as a file instead." };
    }
    await this.look();
    return { id };
  }

  /** Takes it off the Shelf; parts on drawings carry their own copy. */
  async remove(id: string): Promise<void> {
    await this.#ports.kept.remove(KEY + id).catch(() => undefined);
    await this.look();
  }

  want(wanted: Subject | null): void {
    this.store.setState({ wanted });
  }

  /** The work on a subject as it was left, or begun with `symbol` where none was left or nothing in it was changed. */
  workOn(subject: Subject, symbol: BenchSymbol): BenchHistory {
    const draft = this.store.getState().drafts[keyOf(subject)];
    return draft !== undefined && draft.present !== draft.kept ? draft : begin(symbol);
  }

  leave(subject: Subject, work: BenchHistory): void {
    this.store.setState({ drafts: { ...this.store.getState().drafts, [keyOf(subject)]: work } });
  }
}

function keyOf(subject: Subject): string {
  switch (subject.from) {
    case "new":
      return "new";
    case "shelf":
      return `shelf ${subject.id}`;
    case "board":
      return `board ${subject.drawingId} ${subject.partId}`;
  }
}
