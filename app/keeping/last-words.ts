import type { Document } from "../../core/document/index.ts";
import { readCircuitFile, writeCircuitFile } from "../../core/file/index.ts";

/** The part of localStorage that is used. */
export type LastWordsStorage = Pick<Storage, "getItem" | "setItem" | "removeItem" | "key" | "length">;

interface LastWord {
  readonly id: string;
  /** Number of the last save before it. */
  readonly save: number;
  readonly document: Document;
}

const PREFIX = "groundstrap last words ";

/**
 * What a page had not kept yet when it was left. The database answers too late for a page on its way out; this storage takes
 * things at once, and the next page keeps them properly. It may refuse, being small or switched off: then that edit is lost.
 */
export class LastWords {
  readonly #storage: LastWordsStorage;

  constructor(storage: LastWordsStorage) {
    this.#storage = storage;
  }

  write({ id, save, document }: LastWord): void {
    try {
      this.#storage.setItem(PREFIX + id, JSON.stringify({ save, text: writeCircuitFile(document) }));
    } catch {
      // The page is going: nobody is left to be told.
    }
  }

  all(): readonly LastWord[] {
    const keys = Array.from({ length: this.#storage.length }, (_, index) => this.#storage.key(index) ?? "");
    return keys
      .filter((key) => key.startsWith(PREFIX))
      .flatMap((key) => {
        const id = key.slice(PREFIX.length);
        const word = wordIn(this.#storage.getItem(key) ?? "");
        return word === null ? [] : [{ id, ...word }];
      });
  }

  drop(id: string): void {
    this.#storage.removeItem(PREFIX + id);
  }
}

function wordIn(kept: string): Omit<LastWord, "id"> | null {
  try {
    const { save, text } = Object(JSON.parse(kept)) as Readonly<Record<string, unknown>>;
    if (typeof save !== "number" || typeof text !== "string") return null;
    const read = readCircuitFile(text);
    return "error" in read ? null : { save, document: read.document };
  } catch {
    return null;
  }
}
