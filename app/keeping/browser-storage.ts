import type { LastWordsStorage } from "./last-words.ts";

/** The browser's storage that takes things at once; where it is switched off, one that holds them while the page is open. */
export function browserStorage(): LastWordsStorage {
  try {
    return localStorage;
  } catch {
    return memoryStorage();
  }
}

/** Holds things until the page is closed. */
export function memoryStorage(): LastWordsStorage {
  const kept = new Map<string, string>();
  return {
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, value) => void kept.set(key, value),
    removeItem: (key) => void kept.delete(key),
    key: (index) => [...kept.keys()][index] ?? null,
    get length() {
      return kept.size;
    },
  };
}
