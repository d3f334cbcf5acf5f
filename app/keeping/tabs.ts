/** What tabs of this browser say to one another about the drawings they have open. */
export interface Tabs {
  /** Takes the right to edit a drawing; `null` when another tab has it. `onLost` is called when that tab takes it over. */
  hold(id: string, onLost: () => void): Promise<Hold | null>;
  /** Takes it over from whichever tab has it. */
  takeOver(id: string, onLost: () => void): Promise<Hold>;
  /** Calls once the right to edit is free; the answer stops waiting. */
  whenFree(id: string, onFree: () => void): () => void;
  tellSaved(id: string): void;
  onSaved(listener: (id: string) => void): void;
}

export interface Hold {
  release(): void;
}

const lockOf = (id: string) => `groundstrap drawing ${id}`;

/** By Web Locks and a broadcast channel. A browser without locks lets every tab edit; the save count still guards the work. */
export function browserTabs(): Tabs {
  const channel = new BroadcastChannel("groundstrap drawings");
  return {
    hold: (id, onLost) => request(id, { ifAvailable: true }, onLost),
    takeOver: async (id, onLost) => (await request(id, { steal: true }, onLost)) ?? FREE,
    whenFree: (id, onFree) => {
      const stop = new AbortController();
      void navigator.locks?.request(lockOf(id), { signal: stop.signal }, onFree).catch(() => undefined);
      return () => stop.abort();
    },
    tellSaved: (id) => channel.postMessage(id),
    onSaved: (listener) => {
      channel.onmessage = (event: MessageEvent<unknown>) => {
        if (typeof event.data === "string") listener(event.data);
      };
    },
  };
}

const FREE: Hold = { release: () => undefined };

function request(id: string, options: LockOptions, onLost: () => void): Promise<Hold | null> {
  if (!navigator.locks) return Promise.resolve(FREE);
  return new Promise((resolve) => {
    const held = navigator.locks.request(lockOf(id), options, (lock) => {
      if (lock === null) return resolve(null);
      return new Promise<void>((release) => resolve({ release }));
    });
    // A lock taken over by another tab ends the promise of the one that had it.
    held.catch(onLost);
  });
}
