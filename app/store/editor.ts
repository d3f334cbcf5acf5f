import { createStore, type StoreApi } from "zustand/vanilla";
import {
  record,
  redo,
  startHistory,
  undo,
  type Document,
  type History,
  type Transaction,
} from "../../core/document/index.ts";
import type { BoardMarks } from "../board/marks.ts";
import type { AnalystNews } from "../worker/analyst.ts";
import type { Ask, Positions, Present } from "../worker/protocol.ts";
import { controlsOf, heldAfter, positionAfter } from "./controls-of.ts";
import { changeWords } from "./change-words.ts";
import {
  documentOf,
  firstState,
  type EditorState,
  type InstrumentId,
  type Notice,
  type PlaceId,
} from "./editor-state.ts";
import { leadsAfter } from "./leads.ts";
import { keepSituations } from "./keep-situations.ts";
import { keepPreferences, readPreferences, themeOf, type Preferences, type TextKeeper } from "./preferences.ts";
import { sameCircuit } from "./same-circuit.ts";

/** What the editor needs of the world outside. */
export interface EditorPorts {
  readonly now: () => number;
  readonly preferences: TextKeeper;
  readonly deviceIsDark: () => boolean;
  /** Puts a question to the analysis; answers come back through `hear`. */
  readonly ask: (question: Ask) => void;
}

/** The answer is nearly always there by the next frame; if it takes longer than this, what was true before is no longer shown. */
const STALE_AFTER_MS = 120;

/** The one place where the drawing and everything about the window changes. Panels and the Board read `store` and call these. */
export class Editor {
  readonly store: StoreApi<EditorState>;
  readonly #ports: EditorPorts;

  constructor(ports: EditorPorts) {
    this.#ports = ports;
    const preferences = readPreferences(ports.preferences);
    this.store = createStore(() => firstState(preferences, themeOf(preferences, ports.deviceIsDark())));
  }

  get state(): EditorState {
    return this.store.getState();
  }

  set(change: Partial<EditorState>): void {
    this.store.setState(change);
  }

  /** Applies the edits as one step to undo. In a drawing that is only looked at nothing happens but a line that says so. */
  dispatch(transaction: Transaction): void {
    if (this.#refuses()) return;
    const edits = keepSituations(documentOf(this.state), transaction.edits);
    this.#arrive(record(this.state.history, { ...transaction, edits }, this.#ports.now()), transaction.label);
  }

  undo(): void {
    const label = this.state.history.past.at(-1)?.label;
    const before = undo(this.state.history);
    if (before !== null && !this.#refuses()) this.#arrive(before, `Undone: ${label}`);
  }

  redo(): void {
    const label = this.state.history.future.at(-1)?.label;
    const after = redo(this.state.history);
    if (after !== null && !this.#refuses()) this.#arrive(after, `Done again: ${label}`);
  }

  /** Opens another drawing in place of the present one. Its history starts anew. */
  open(drawing: {
    readonly id: string;
    readonly document: Document;
    readonly save: number;
    readonly access?: EditorState["access"];
  }): void {
    this.set({
      drawingId: drawing.id,
      history: startHistory(drawing.document),
      revision: this.state.revision + 1,
      selection: new Set(),
      positions: {},
      tool: "select",
      placing: null,
      instrument: null,
      leads: [],
      reveal: { places: [] },
      spotlight: [],
      chosenSnag: null,
      wireFrom: null,
      menu: null,
      report: null,
      reportRevision: -1,
      present: null,
      marks: null,
      keeping: { status: "kept", atMs: this.#ports.now() },
      access: drawing.access ?? "editing",
      save: drawing.save,
    });
    this.#analyse();
  }

  /** The tab that edits this drawing kept a newer one: show it, as it is not ours to undo. */
  follow(document: Document, save: number): void {
    this.#arrive(startHistory(document), "Changed in the other tab");
    this.set({ save, keeping: { status: "kept", atMs: this.#ports.now() } });
  }

  select(ids: Iterable<string>): void {
    this.set({ selection: new Set(ids) });
  }

  /** Moves a control; only the present situation is solved again. */
  operate(controlId: string, position: string): void {
    this.#stand({ ...this.state.positions, [controlId]: position });
  }

  /**
   * To the control's next position. A momentary one is held there until `release`; with several ways to hold it, each press takes the
   * next way.
   */
  flick(controlId: string): void {
    const control = controlsOf(documentOf(this.state)).find((one) => one.id === controlId);
    if (control === undefined) return;
    if (!control.momentary) return this.operate(controlId, positionAfter(control, this.state.positions[controlId]));
    const held = heldAfter(control, this.#heldLast.get(controlId));
    this.#heldLast.set(controlId, held);
    this.operate(controlId, held);
  }

  release(controlId: string): void {
    const control = controlsOf(documentOf(this.state)).find((one) => one.id === controlId);
    if (control?.momentary) this.operate(controlId, control.positions[0]!);
  }

  /** All controls at once: a saved situation. */
  stand(positions: Positions): void {
    this.#stand(positions);
  }

  /** The Board has another size: what was in its middle stays there. */
  resizeBoard(width: number, height: number): void {
    const { view, boardSize } = this.state;
    const moved = { ...view, x: view.x + (width - boardSize.width) / 2, y: view.y + (height - boardSize.height) / 2 };
    this.set({ boardSize: { width, height }, ...(boardSize.width > 0 && { view: moved }) });
  }

  /** Takes an instrument in hand, or puts it down. */
  takeInstrument(instrument: InstrumentId | null, dial = this.state.dial): void {
    const points = instrument === "touch" || instrument === "meter";
    this.set({ instrument, dial, leads: [], spotlight: [], tool: points ? "probe" : "select", placing: null });
    // A place open over the Board would hide it.
    if (instrument !== null) this.show(null);
  }

  /** Puts the instrument in hand to a place: a terminal's address or a wire's id. */
  probe(at: string): void {
    const leads = leadsAfter(this.state, at);
    if (typeof leads === "string") this.say(leads);
    else this.set({ leads });
  }

  show(place: PlaceId | null): void {
    this.set({ place, menu: null });
  }

  setPreferences(change: Partial<Preferences>): void {
    const preferences = { ...this.state.preferences, ...change };
    keepPreferences(this.#ports.preferences, preferences);
    this.set({ preferences, theme: themeOf(preferences, this.#ports.deviceIsDark()) });
  }

  /** The device went dark or light. */
  followDevice(): void {
    this.set({ theme: themeOf(this.state.preferences, this.#ports.deviceIsDark()) });
  }

  /** Gives the live region its next words; several in one frame are heard as the last of them. */
  say(text: string): void {
    this.set({ said: { text, turn: this.state.said.turn + 1 } });
  }

  notify(notice: Notice): void {
    this.set({ notices: [...this.state.notices.filter((one) => one.about !== notice.about), notice] });
  }

  dismiss(about: string): void {
    if (this.state.notices.some((one) => one.about === about)) {
      this.set({ notices: this.state.notices.filter((one) => one.about !== about) });
    }
  }

  /** Takes what the analysis says. Words about a drawing that has changed since are dropped, never shown. */
  hear(news: AnalystNews): void {
    switch (news.type) {
      case "ready":
        return;
      case "analysed":
        if (news.revision !== this.#askedRevision) return;
        this.dismiss("analysis");
        this.#saySnags(news.report.snags.length);
        this.set({
          report: news.report,
          reportRevision: this.state.revision,
          present: news.present,
          marks: this.#current(news.marks),
          analysis: "done",
        });
        return;
      case "present":
        if (news.revision !== this.#askedRevision) return;
        this.#sayChanges(news.present);
        this.set({ present: news.present, marks: this.#current(news.marks) });
        return;
      case "restarted":
        this.notify({
          about: "analysis",
          tone: "plain",
          text: "The analysis stopped and was started again. Your drawing is untouched.",
        });
        return;
      case "failed":
      case "stuck":
        this.set({ analysis: "stuck", report: null, present: null, marks: null });
        this.notify({
          about: "analysis",
          tone: "trouble",
          text: `This drawing could not be analysed (${news.reason}). Nothing is lost: keep drawing, and the next change tries again.`,
        });
    }
  }

  /** Where each momentary control was held last. */
  readonly #heldLast = new Map<string, string>();

  #patience: ReturnType<typeof setTimeout> | undefined;

  /** Revision the last question was about; pure moves since then keep its answer valid. */
  #askedRevision = -1;

  #current(marks: BoardMarks): BoardMarks {
    return marks.revision === this.state.revision ? marks : { ...marks, revision: this.state.revision };
  }

  /** An edit that brings or clears snags is heard with their number. */
  #saySnags(count: number): void {
    const before = this.state.report?.snags.length;
    if (before === undefined || before === count) return;
    this.say(
      `${this.state.said.text}. ${count === 0 ? "No snags now" : count === 1 ? "1 snag now" : `${count} snags now`}`,
    );
  }

  #sayChanges(after: Present): void {
    const { said, present } = this.state;
    const changes = changeWords(documentOf(this.state), present, after);
    if (changes !== "") this.say(`${said.text}. ${changes}`);
  }

  #refuses(): boolean {
    if (this.state.access === "editing") return false;
    this.say("This drawing is open for editing in another tab.");
    return true;
  }

  #arrive(history: History, said: string): void {
    const before = documentOf(this.state);
    const after = history.present;
    if (after === before) return this.set({ history });
    const revision = this.state.revision + 1;
    const moved = sameCircuit(before, after);
    const there = new Set([...after.parts, ...after.wires, ...(after.notes ?? [])].map((thing) => thing.id));
    this.set({
      history,
      revision,
      selection: new Set([...this.state.selection].filter((id) => there.has(id))),
      keeping: { status: "waiting" },
      said: { text: said, turn: this.state.said.turn + 1 },
      ...(moved && this.state.reportRevision === this.state.revision
        ? { reportRevision: revision, marks: this.state.marks && { ...this.state.marks, revision } }
        : {}),
    });
    if (!moved) this.#analyse();
  }

  #analyse(): void {
    const { revision, positions } = this.state;
    this.#askedRevision = revision;
    this.set({ analysis: "waiting" });
    clearTimeout(this.#patience);
    this.#patience = setTimeout(
      () => this.state.analysis === "waiting" && this.set({ marks: null, present: null }),
      STALE_AFTER_MS,
    );
    this.#ports.ask({ type: "analyse", revision, document: documentOf(this.state), positions });
  }

  #stand(positions: Positions): void {
    this.set({ positions });
    const stands = controlsOf(documentOf(this.state)).filter(
      ({ id, positions: [rest] }) => (positions[id] ?? rest) !== rest,
    );
    this.say(
      stands.length === 0 ? "Everything at rest" : stands.map(({ id, name }) => `${name} ${positions[id]}`).join(", "),
    );
    this.#ports.ask({ type: "present", revision: this.#askedRevision, positions });
  }
}
