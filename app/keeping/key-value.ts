import { createStore, del, entries, get, update } from "idb-keyval";

/** The little the app asks of a place to keep things, so that tests and a browser without one can stand in for it. */
export interface KeyValue {
  read(key: string): Promise<unknown>;
  /** Reads and writes in one go: no other tab can come between. A throw from `change` leaves the old value. */
  update(key: string, change: (old: unknown) => unknown): Promise<void>;
  remove(key: string): Promise<void>;
  all(): Promise<readonly (readonly [key: string, value: unknown])[]>;
}

/** The browser's own database. Every call may reject: storage can be full, switched off, or taken away. */
export function browserKeyValue(): KeyValue {
  const store = createStore("groundstrap", "drawings");
  // Some browsers refuse by throwing at once: async makes that a rejection too.
  return {
    read: async (key) => get(key, store),
    update: async (key, change) => update(key, change, store),
    remove: async (key) => del(key, store),
    all: async () => entries<string, unknown>(store),
  };
}

/** Keeps things until the page is closed. */
export function memoryKeyValue(): KeyValue {
  const kept = new Map<string, unknown>();
  return {
    read: async (key) => kept.get(key),
    update: async (key, change) => void kept.set(key, change(kept.get(key))),
    remove: async (key) => void kept.delete(key),
    all: async () => [...kept],
  };
}
