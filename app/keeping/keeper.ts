import type { Document } from "../../core/document/index.ts";
import { EXAMPLES } from "../../core/examples/index.ts";
import { placeMissing } from "../../core/placing/index.ts";
import { documentOf, EMPTY_DOCUMENT } from "../store/editor-state.ts";
import type { Editor } from "../store/editor.ts";
import { titleOf, type DrawingEntry, type DrawingShelf } from "./drawing-shelf.ts";
import type { LastWords } from "./last-words.ts";
import type { Hold, Tabs } from "./tabs.ts";

export interface KeeperPorts {
  readonly shelf: DrawingShelf;
  readonly lastWords: LastWords;
  readonly tabs: Tabs;
  readonly newId: () => string;
  readonly now: () => number;
  readonly saveToFile: () => void;
  /** Saves a drawing that can't be opened here, as its file. */
  readonly saveText: (title: string, text: string) => void;
  /** Asks the browser not to tidy away what is kept; it may refuse without a word. */
  readonly askToPersist: () => void;
  /** Shows in the address which drawing this window has open, so that a reload comes back to it. */
  readonly setAddress: (search: string) => void;
}

interface Opened {
  readonly document: Document;
  readonly entry: DrawingEntry;
}

const QUIET_MS = 350;
const LATEST_MS = 850;

/** Keeps the open drawing in the browser and opens others in its place. Nothing open is ever let go of before it is kept. */
export class Keeper {
  readonly #editor: Editor;
  readonly #ports: KeeperPorts;
  #hold: Hold | null = null;
  #stopWaiting: () => void = () => undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #firstUnkeptMs: number | null = null;
  #keeping: Promise<void> = Promise.resolve();

  constructor(editor: Editor, ports: KeeperPorts) {
    this.#editor = editor;
    this.#ports = ports;
    editor.store.subscribe((state, before) => {
      if (state.history !== before.history && state.keeping.status === "waiting") this.#keepSoon();
    });
    ports.tabs.onSaved((id) => void this.#lookAgain(id));
  }

  /** Opens what the address asks for, else what was open last, else the first demo. */
  async start(search: string): Promise<void> {
    void this.#ports.shelf.tidy().catch(() => undefined);
    await this.#takeUpLastWords();
    const asked = new URLSearchParams(search);
    const example = asked.get("example");
    const drawing = asked.get("drawing");
    if (example !== null) return this.openDemo(example);
    if (drawing !== null && (await this.openKept(drawing))) return;
    const [last] = await this.list();
    if (last !== undefined && (await this.openKept(last.id))) return;
    if (EXAMPLES[0] === undefined) return this.newDrawing();
    await this.openDemo(EXAMPLES[0].name);
  }

  /** The drawings kept, newest opened first; none where the browser keeps nothing. */
  async list(options?: { deleted?: boolean }): Promise<readonly DrawingEntry[]> {
    return this.#ports.shelf.list(options).catch(() => []);
  }

  async openDemo(name: string): Promise<void> {
    const example = EXAMPLES.find((one) => one.name === name);
    if (example === undefined) {
      await this.newDrawing();
      const names = EXAMPLES.map((one) => one.name).join(", ");
      return this.#editor.notify({
        about: "open",
        tone: "trouble",
        text: `There is no demo "${name}". There are: ${names}.`,
      });
    }
    await this.openNew(placeMissing(example.document));
    this.#ports.setAddress(`?example=${encodeURIComponent(name)}`);
  }

  async newDrawing(): Promise<void> {
    await this.openNew(EMPTY_DOCUMENT);
  }

  /** A drawing that this browser does not have yet: a file, a demo, a copy. It is kept from the first edit on, or at once. */
  async openNew(document: Document, { keepNow = false } = {}): Promise<void> {
    await this.#letGo();
    const id = this.#ports.newId();
    this.#hold = await this.#ports.tabs.hold(id, () => this.#lost());
    this.#editor.open({ id, document, save: 0 });
    this.#ports.setAddress("");
    if (keepNow) {
      this.#editor.set({ keeping: { status: "waiting" } });
      await this.flush();
    }
  }

  /** Opens a kept drawing; when another tab is editing it, only to look at. False, and a line that says why, if it can't be. */
  async openKept(id: string): Promise<boolean> {
    const opened = await this.#read(id);
    if (opened === null) return false;
    await this.#letGo();
    this.#hold = await this.#ports.tabs.hold(id, () => this.#lost());
    this.#show(id, opened);
    return true;
  }

  /** Edits here from now on; the other tab only looks. */
  async takeOver(): Promise<void> {
    const { drawingId } = this.#editor.state;
    this.#stopWaiting();
    this.#hold = await this.#ports.tabs.takeOver(drawingId, () => this.#lost());
    const opened = await this.#read(drawingId);
    if (opened !== null) this.#show(drawingId, opened);
  }

  /** Goes on with a copy under another title; the original stays as it was kept. */
  async copyDrawing(): Promise<void> {
    const document = documentOf(this.#editor.state);
    this.#editor.set({ keeping: { status: "kept", atMs: this.#ports.now() } });
    await this.openNew(
      { ...document, sheet: { ...document.sheet, title: `${titleOf(document)}, copy` } },
      { keepNow: true },
    );
  }

  async rename(id: string, title: string): Promise<void> {
    if (id === this.#editor.state.drawingId) {
      this.#editor.dispatch({ label: "Rename the drawing", edits: [{ op: "set-sheet", change: { title } }] });
      return this.flush();
    }
    const trouble = await this.#ports.shelf.rename(id, title);
    if (trouble !== null) this.#editor.notify({ about: "open", tone: "trouble", text: trouble });
  }

  /** Deletes a kept drawing; the open one makes way for the next. */
  async remove(id: string): Promise<void> {
    if (id === this.#editor.state.drawingId) {
      await this.flush();
      await this.#ports.shelf.remove(id);
      const [next] = await this.list();
      if (next === undefined || !(await this.openKept(next.id))) await this.newDrawing();
      return;
    }
    await this.#ports.shelf.remove(id);
  }

  restore(id: string): Promise<void> {
    return this.#ports.shelf.restore(id);
  }

  /** The open drawing went to a file as it is now. */
  async savedToFile(): Promise<void> {
    await this.flush();
    const { drawingId, save } = this.#editor.state;
    await this.#ports.shelf.markSavedToFile(drawingId, save).catch(() => undefined);
  }

  /** The page is on its way out. */
  leave(): void {
    const { access, keeping, drawingId: id, save, history } = this.#editor.state;
    if (access === "editing" && keeping.status === "waiting")
      this.#ports.lastWords.write({ id, save, document: history.present });
    void this.flush();
  }

  /** Keeps what is not kept yet, now. */
  flush(): Promise<void> {
    clearTimeout(this.#timer);
    this.#firstUnkeptMs = null;
    this.#keeping = this.#keeping.then(() => this.#keep());
    return this.#keeping;
  }

  async #read(id: string): Promise<Opened | null> {
    const opened = await this.#ports.shelf
      .open(id)
      .catch(() => ({ error: "The browser does not give the drawing back." }));
    if (!("error" in opened)) return opened;
    const text = await this.#ports.shelf.textOf(id).catch(() => null);
    this.#editor.notify({
      about: "open",
      tone: "trouble",
      text: opened.error,
      ...(text !== null && { action: { label: "Save its file", run: () => this.#ports.saveText(id, text) } }),
    });
    return null;
  }

  #show(id: string, { document, entry }: Opened): void {
    const access = this.#hold === null ? "looking" : "editing";
    this.#editor.open({ id, document, save: entry.save, access });
    this.#ports.setAddress(`?drawing=${encodeURIComponent(id)}`);
    if (access === "looking") this.#onlyLook(id);
    else this.#editor.dismiss("tabs");
  }

  #keepSoon(): void {
    const now = this.#ports.now();
    this.#firstUnkeptMs ??= now;
    clearTimeout(this.#timer);
    const waitMs = Math.max(0, Math.min(QUIET_MS, this.#firstUnkeptMs + LATEST_MS - now));
    this.#timer = setTimeout(() => void this.flush(), waitMs);
  }

  async #keep(): Promise<void> {
    const { state } = this.#editor;
    if (state.access !== "editing" || state.keeping.status === "kept" || state.keeping.status === "conflict") return;
    const document = documentOf(state);
    const outcome = await this.#ports.shelf.keep(state.drawingId, document, state.save);
    if (this.#editor.state.drawingId !== state.drawingId) return;
    switch (outcome.status) {
      case "kept": {
        const isLatest = documentOf(this.#editor.state) === document;
        this.#editor.set({
          save: outcome.save,
          keeping: isLatest ? { status: "kept", atMs: outcome.atMs } : { status: "waiting" },
        });
        if (isLatest) this.#ports.lastWords.drop(state.drawingId);
        else this.#keepSoon();
        this.#editor.dismiss("keeping");
        if (outcome.save === 1) this.#ports.askToPersist();
        this.#ports.setAddress(`?drawing=${encodeURIComponent(state.drawingId)}`);
        return this.#ports.tabs.tellSaved(state.drawingId);
      }
      case "conflict":
        this.#editor.set({ keeping: { status: "conflict" } });
        return this.#editor.notify({
          about: "keeping",
          tone: "trouble",
          text: "Another tab kept a later version of this drawing. Yours is still here but is not being kept.",
          action: { label: "Go on with a copy", run: () => void this.copyDrawing() },
        });
      case "refused":
        this.#editor.set({ keeping: outcome });
        return this.#editor.notify({
          about: "keeping",
          tone: "trouble",
          text: `Not kept in this browser: ${outcome.reason} Your drawing is safe only while this page is open.`,
          action: { label: "Save to a file", run: this.#ports.saveToFile },
        });
    }
  }

  /** Keeps what an earlier page had to leave unkept, unless others went on with that drawing since. */
  async #takeUpLastWords(): Promise<void> {
    for (const { id, save, document } of this.#ports.lastWords.all()) {
      let outcome = await this.#ports.shelf.keep(id, document, save);
      // Its very last save may have gone through without its hearing of it.
      if (outcome.status === "conflict") outcome = await this.#ports.shelf.keep(id, document, save + 1);
      if (outcome.status !== "refused") this.#ports.lastWords.drop(id);
    }
  }

  async #letGo(): Promise<void> {
    await this.flush();
    this.#stopWaiting();
    this.#stopWaiting = () => undefined;
    this.#hold?.release();
    this.#hold = null;
    this.#editor.dismiss("tabs");
    this.#editor.dismiss("keeping");
  }

  #lost(): void {
    this.#hold = null;
    this.#editor.set({ access: "looking" });
    this.#onlyLook(this.#editor.state.drawingId);
  }

  #onlyLook(id: string): void {
    this.#editor.notify({
      about: "tabs",
      tone: "trouble",
      text: "This drawing is being edited in another tab. Here you can look and operate, and changes there show here.",
      action: { label: "Make a copy to edit", run: () => void this.copyDrawing() },
    });
    this.#stopWaiting();
    this.#stopWaiting = this.#ports.tabs.whenFree(id, () => void this.openKept(id));
  }

  /** The tab that edits kept something: show it here too. */
  async #lookAgain(id: string): Promise<void> {
    const { drawingId, access } = this.#editor.state;
    if (id !== drawingId || access !== "looking") return;
    const opened = await this.#ports.shelf.open(id).catch(() => null);
    if (opened !== null && "document" in opened) this.#editor.follow(opened.document, opened.entry.save);
  }
}
