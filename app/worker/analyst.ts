import type { Consultations, Topic } from "./consultations.ts";
import type { Ask, Consult, Consulted, Positions, Told } from "./protocol.ts";

/** The part of a browser worker that is used, so that tests can stand in for one. */
export interface WorkerPort {
  postMessage(message: Ask | Consult): void;
  terminate(): void;
  onmessage: ((event: { data: Told | Consulted }) => void) | null;
  onerror: ((event: { message?: string; preventDefault?: () => void }) => void) | null;
}

/** What the analyst reports besides the worker's own words. */
export type AnalystNews = Told | { readonly type: "restarted" } | { readonly type: "stuck"; readonly reason: string };

interface Options {
  readonly makeWorker: () => WorkerPort;
  readonly onNews: (news: AnalystNews) => void;
  /** A worker silent for longer is taken for dead; usually 20 s and more for a large drawing. */
  readonly patienceMs?: number;
}

/** The same drawing may bring the worker down this often before it is left alone until the next edit. */
const MOST_CRASHES = 2;

/** A slow phone takes its time over a large drawing. */
const PATIENCE_MS = 20_000;
const PATIENCE_A_PART_MS = 8;

/**
 * Keeps one worker going and never more than one question in it: what is asked meanwhile waits, and only the newest of each sort
 * is kept, so the answer is always to the latest. A worker that dies or falls silent is replaced and asked again.
 */
export class Analyst {
  readonly #options: Options;
  #worker: WorkerPort | null = null;
  #busyWith: Ask | null = null;
  #waiting: Ask | null = null;
  /** The document the worker holds; sent again after a restart. */
  #lastAnalyse: Extract<Ask, { type: "analyse" }> | null = null;
  #crashes = 0;
  #consulted = 0;
  readonly #consulting = new Map<number, (answer: unknown) => void>();
  #watch: ReturnType<typeof setTimeout> | undefined;

  constructor(options: Options) {
    this.#options = options;
    this.#start();
  }

  ask(question: Ask): void {
    if (question.type === "analyse") {
      this.#crashes = 0;
      this.#lastAnalyse = question;
      this.#waiting = question;
    } else {
      if (this.#lastAnalyse === null || this.#crashes > MOST_CRASHES) return;
      this.#lastAnalyse = { ...this.#lastAnalyse, positions: question.positions };
      this.#waiting = this.#waiting?.type === "analyse" ? this.#lastAnalyse : question;
    }
    this.#send();
  }

  /** Asks something besides the running analysis; `undefined` when there is no answer. */
  consult<T extends Topic>(
    topic: T,
    asks: Consultations[T]["asks"],
    positions: Positions,
  ): Promise<Consultations[T]["gives"] | undefined> {
    if (this.#worker === null) return Promise.resolve(undefined);
    const number = (this.#consulted += 1);
    const consult: Consult<T> = { type: "consult", number, topic, asks, positions };
    this.#worker.postMessage(consult);
    return new Promise((resolve) => this.#consulting.set(number, resolve as (answer: unknown) => void));
  }

  stop(): void {
    clearTimeout(this.#watch);
    this.#worker?.terminate();
    this.#worker = null;
    for (const resolve of this.#consulting.values()) resolve(undefined);
    this.#consulting.clear();
  }

  #start(): void {
    const worker = this.#options.makeWorker();
    worker.onmessage = ({ data }) => this.#hear(data);
    worker.onerror = (event) => {
      event.preventDefault?.();
      this.#replace(event.message ?? "it stopped");
    };
    this.#worker = worker;
  }

  #send(): void {
    if (this.#busyWith !== null || this.#waiting === null) return;
    if (this.#worker === null) this.#start();
    this.#busyWith = this.#waiting;
    this.#waiting = null;
    const parts = this.#lastAnalyse?.document.parts.length ?? 0;
    const patienceMs = this.#options.patienceMs ?? PATIENCE_MS + parts * PATIENCE_A_PART_MS;
    this.#watch = setTimeout(() => this.#replace("it took too long"), patienceMs);
    this.#worker!.postMessage(this.#busyWith);
  }

  #hear(told: Told | Consulted): void {
    if (told.type === "consulted") {
      this.#consulting.get(told.number)?.(told.answer);
      this.#consulting.delete(told.number);
      return;
    }
    if (told.type !== "ready") {
      clearTimeout(this.#watch);
      this.#busyWith = null;
    }
    this.#options.onNews(told);
    this.#send();
  }

  #replace(reason: string): void {
    this.stop();
    this.#busyWith = null;
    this.#crashes += 1;
    if (this.#crashes > MOST_CRASHES) {
      this.#waiting = null;
      this.#options.onNews({ type: "stuck", reason });
      return;
    }
    this.#waiting = this.#lastAnalyse;
    this.#options.onNews({ type: "restarted" });
    this.#send();
  }
}
