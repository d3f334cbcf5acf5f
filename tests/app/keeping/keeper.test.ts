import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { memoryStorage } from "../../../app/keeping/browser-storage.ts";
import { DrawingShelf } from "../../../app/keeping/drawing-shelf.ts";
import { Keeper } from "../../../app/keeping/keeper.ts";
import { memoryKeyValue, type KeyValue } from "../../../app/keeping/key-value.ts";
import { LastWords } from "../../../app/keeping/last-words.ts";
import type { Tabs } from "../../../app/keeping/tabs.ts";
import { documentOf } from "../../../app/store/editor-state.ts";
import { Editor } from "../../../app/store/editor.ts";
import { EXAMPLES } from "../../../core/examples/index.ts";
import { lampCircuit, textKeeper } from "../drawing.ts";

/** Tabs of one browser: one lock for each drawing, and everybody hears of a save. */
function browser() {
  const holders = new Map<string, () => void>();
  const waiting: { id: string; onFree: () => void }[] = [];
  const listeners: ((id: string) => void)[] = [];
  const free = (id: string) => {
    holders.delete(id);
    const next = waiting.findIndex((one) => one.id === id);
    if (next >= 0) waiting.splice(next, 1)[0]!.onFree();
  };
  const tab = (): Tabs => {
    let heard: (id: string) => void = () => undefined;
    listeners.push((id) => heard(id));
    const own = listeners.at(-1);
    const take = (id: string, onLost: () => void) => {
      holders.set(id, onLost);
      return { release: () => holders.get(id) === onLost && free(id) };
    };
    return {
      hold: async (id, onLost) => (holders.has(id) ? null : take(id, onLost)),
      takeOver: async (id, onLost) => {
        const lost = holders.get(id);
        const hold = take(id, onLost);
        lost?.();
        return hold;
      },
      whenFree: (id, onFree) => {
        const one = { id, onFree };
        waiting.push(one);
        return () => void (waiting.includes(one) && waiting.splice(waiting.indexOf(one), 1));
      },
      tellSaved: (id) => listeners.filter((listener) => listener !== own).forEach((listener) => listener(id)),
      onSaved: (listener) => (heard = listener),
    };
  };
  return { tab, kept: memoryKeyValue() };
}

let ids = 0;
const savedTexts: string[] = [];

function openTab(tabs: Tabs, kept: KeyValue, lastWords = new LastWords(memoryStorage())) {
  const addresses: string[] = [];
  const now = () => Date.now();
  const editor = new Editor({ now, preferences: textKeeper(), deviceIsDark: () => false, ask: () => undefined });
  const keeper = new Keeper(editor, {
    shelf: new DrawingShelf(kept, now),
    lastWords,
    tabs,
    newId: () => `drawing${(ids += 1)}`,
    now,
    saveToFile: () => undefined,
    saveText: (_title, text) => void savedTexts.push(text),
    askToPersist: () => undefined,
    setAddress: (search) => addresses.push(search),
  });
  const title = () => documentOf(editor.state).sheet?.title;
  const rename = (text: string) =>
    editor.dispatch({ label: "Title", edits: [{ op: "set-sheet", change: { title: text } }] });
  return { editor, keeper, addresses, title, rename };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe("opening the app", () => {
  test("a first visit opens the first demo, and keeps nothing until it is changed", async () => {
    const { tab, kept } = browser();
    const { keeper, title } = openTab(tab(), kept);
    await keeper.start("");
    expect(title()).toBe(EXAMPLES[0]!.document.sheet!.title);
    expect(await keeper.list()).toEqual([]);
  });

  test("a later visit comes back to what was open last", async () => {
    const { tab, kept } = browser();
    const first = openTab(tab(), kept);
    await first.keeper.openNew(lampCircuit, { keepNow: true });
    first.rename("Mine");
    await vi.advanceTimersByTimeAsync(1000);
    const second = openTab(browser().tab(), kept);
    await second.keeper.start("");
    expect(second.title()).toBe("Mine");
    expect(second.addresses.at(-1)).toBe(first.addresses.at(-1));
  });

  test("an unknown demo opens an empty drawing and names the ones there are", async () => {
    const { tab, kept } = browser();
    const { editor, keeper } = openTab(tab(), kept);
    await keeper.start("?example=no-such");
    expect(documentOf(editor.state).parts).toEqual([]);
    expect(editor.state.notices[0]!.text).toContain(EXAMPLES[0]!.name);
  });
});

describe("a drawing that can't be opened", () => {
  test("is refused with the reason, its file is offered, and what is open stays", async () => {
    const { tab, kept } = browser();
    const { editor, keeper, title } = openTab(tab(), kept);
    await keeper.openNew(lampCircuit, { keepNow: true });
    const newer = '{"format":"groundstrap","version":2,"parts":[],"wires":[]}';
    await kept.update("drawing newer", () => ({
      id: "newer",
      title: "Newer",
      text: newer,
      save: 1,
      deletedAtMs: null,
    }));
    expect(await keeper.openKept("newer")).toBe(false);
    expect(title()).toBe("Lamp");
    const [notice] = editor.state.notices;
    expect(notice!.text).toContain("version");
    notice!.action!.run();
    expect(savedTexts.at(-1)).toBe(newer);
  });
});

describe("keeping the work", () => {
  test("every edit is kept within a second, however fast they come", async () => {
    const { tab, kept } = browser();
    const { editor, keeper, rename } = openTab(tab(), kept);
    await keeper.openNew(lampCircuit);
    for (let i = 0; i < 9; i += 1) {
      rename(`Title ${i}`);
      await vi.advanceTimersByTimeAsync(100);
    }
    expect((await keeper.list()).length).toBe(1);
    await vi.advanceTimersByTimeAsync(1000);
    expect((await keeper.list())[0]!.title).toBe("Title 8");
    expect(editor.state.keeping.status).toBe("kept");
  });

  test("an edit made just before the page is left is kept by the next page", async () => {
    const { tab, kept } = browser();
    const lastWords = new LastWords(memoryStorage());
    const gone = { isGone: false };
    const leaving: KeyValue = {
      ...kept,
      // A page on its way out never hears from the database again.
      update: (key, change) => (gone.isGone ? new Promise<never>(() => undefined) : kept.update(key, change)),
    };
    const first = openTab(tab(), leaving, lastWords);
    await first.keeper.openNew(lampCircuit, { keepNow: true });
    first.rename("Just before");
    gone.isGone = true;
    first.keeper.leave();
    const next = openTab(browser().tab(), kept, lastWords);
    await next.keeper.start("");
    expect(next.title()).toBe("Just before");
    expect(lastWords.all()).toEqual([]);
  });

  test("what a page left unkept does not undo what others kept since", async () => {
    const { tab, kept } = browser();
    const lastWords = new LastWords(memoryStorage());
    const { editor, keeper, rename, title } = openTab(tab(), kept, lastWords);
    await keeper.openNew(lampCircuit, { keepNow: true });
    for (const text of ["Second", "Third"]) {
      rename(text);
      await keeper.flush();
    }
    lastWords.write({ id: editor.state.drawingId, save: 1, document: lampCircuit });
    await keeper.start("");
    expect(title()).toBe("Third");
    expect(lastWords.all()).toEqual([]);
  });

  test("opening another drawing keeps the open one first", async () => {
    const { tab, kept } = browser();
    const { keeper, rename } = openTab(tab(), kept);
    await keeper.openNew(lampCircuit);
    rename("Before");
    await keeper.newDrawing();
    expect((await keeper.list()).map((entry) => entry.title)).toEqual(["Before"]);
  });

  test("storage that refuses is said, the file offered, and the next edit tries again", async () => {
    const { tab, kept } = browser();
    const full = { isFull: true };
    const { editor, keeper, rename } = openTab(tab(), {
      ...kept,
      update: (key, change) =>
        full.isFull
          ? Promise.reject(Object.assign(new Error(), { name: "QuotaExceededError" }))
          : kept.update(key, change),
    });
    await keeper.openNew(lampCircuit);
    rename("Too much");
    await vi.advanceTimersByTimeAsync(1000);
    expect(editor.state.keeping.status).toBe("refused");
    expect(editor.state.notices[0]!.action!.label).toBe("Save to a file");
    full.isFull = false;
    rename("Fits now");
    await vi.advanceTimersByTimeAsync(1000);
    expect(editor.state.keeping.status).toBe("kept");
    expect(editor.state.notices).toEqual([]);
  });

  test("deleting the open drawing goes on with the next, and it can be brought back", async () => {
    const { tab, kept } = browser();
    const { editor, keeper, title } = openTab(tab(), kept);
    await keeper.openNew({ ...lampCircuit, sheet: { title: "First" } }, { keepNow: true });
    await vi.advanceTimersByTimeAsync(10);
    await keeper.openNew({ ...lampCircuit, sheet: { title: "Second" } }, { keepNow: true });
    const gone = editor.state.drawingId;
    await keeper.remove(gone);
    expect(title()).toBe("First");
    await keeper.restore(gone);
    expect((await keeper.list()).map((entry) => entry.title)).toContain("Second");
  });
});

describe("two tabs on one drawing", () => {
  async function twoTabs() {
    const { tab, kept } = browser();
    const first = openTab(tab(), kept);
    await first.keeper.openNew(lampCircuit, { keepNow: true });
    const second = openTab(tab(), kept);
    await second.keeper.start(first.addresses.at(-1)!);
    return { first, second, kept };
  }

  test("the second only looks, says so, and offers a copy", async () => {
    const { second } = await twoTabs();
    expect(second.editor.state.access).toBe("looking");
    expect(second.editor.state.notices[0]!.action!.label).toContain("copy");
    second.rename("Mine");
    expect(second.title()).toBe("Lamp");
  });

  test("the second follows what the first keeps", async () => {
    const { first, second } = await twoTabs();
    first.rename("Changed");
    await vi.advanceTimersByTimeAsync(1000);
    expect(second.title()).toBe("Changed");
  });

  test("a copy goes its own way", async () => {
    const { first, second } = await twoTabs();
    await second.keeper.copyDrawing();
    second.rename("Copy of mine");
    await vi.advanceTimersByTimeAsync(1000);
    expect(second.editor.state.access).toBe("editing");
    expect(first.title()).toBe("Lamp");
    expect((await first.keeper.list()).map((entry) => entry.title).toSorted()).toEqual(["Copy of mine", "Lamp"]);
  });

  test("when the first goes elsewhere the second may edit", async () => {
    const { first, second } = await twoTabs();
    await first.keeper.newDrawing();
    await vi.advanceTimersByTimeAsync(10);
    expect(second.editor.state.access).toBe("editing");
  });

  test("taking over turns them round", async () => {
    const { first, second } = await twoTabs();
    await second.keeper.takeOver();
    expect(second.editor.state.access).toBe("editing");
    expect(first.editor.state.access).toBe("looking");
  });

  test("without locks the later save still overwrites nothing", async () => {
    const { kept } = browser();
    const first = openTab(browser().tab(), kept);
    const second = openTab(browser().tab(), kept);
    await first.keeper.openNew(lampCircuit, { keepNow: true });
    await second.keeper.start(first.addresses.at(-1)!);
    first.rename("First was here");
    await vi.advanceTimersByTimeAsync(1000);
    second.rename("Second too");
    await vi.advanceTimersByTimeAsync(1000);
    expect(second.editor.state.keeping.status).toBe("conflict");
    expect((await first.keeper.list())[0]!.title).toBe("First was here");
    await second.keeper.copyDrawing();
    expect((await first.keeper.list()).length).toBe(2);
  });
});
