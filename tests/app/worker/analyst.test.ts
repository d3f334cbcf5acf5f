import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { Analyst, type AnalystNews, type WorkerPort } from "../../../app/worker/analyst.ts";
import type { Ask, Consult, Consulted, Told } from "../../../app/worker/protocol.ts";
import { lampCircuit } from "../drawing.ts";

class FakeWorker implements WorkerPort {
  onmessage: WorkerPort["onmessage"] = null;
  onerror: WorkerPort["onerror"] = null;
  readonly got: (Ask | Consult)[] = [];
  isEnded = false;
  postMessage(ask: Ask | Consult) {
    this.got.push(ask);
  }
  terminate() {
    this.isEnded = true;
  }
  tell(told: Told | Consulted) {
    this.onmessage?.({ data: told });
  }
  crash() {
    this.onerror?.({ message: "out of memory" });
  }
}

function setUp() {
  const workers: FakeWorker[] = [];
  const news: AnalystNews[] = [];
  const analyst = new Analyst({
    makeWorker: () => {
      const worker = new FakeWorker();
      workers.push(worker);
      return worker;
    },
    onNews: (one) => news.push(one),
    patienceMs: 1000,
  });
  return { analyst, workers, news };
}

const analyse = (revision: number): Ask => ({ type: "analyse", revision, document: { ...lampCircuit }, positions: {} });
const present = (revision: number, s1: string): Ask => ({ type: "present", revision, positions: { s1 } });
const failed = (revision: number): Told => ({ type: "failed", revision, reason: "test" });

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe("one worker, the latest question", () => {
  test("questions asked while it works are answered by the last of them only", () => {
    const { analyst, workers } = setUp();
    for (const revision of [1, 2, 3]) analyst.ask(analyse(revision));
    workers[0]!.tell(failed(1));
    expect(workers[0]!.got.map((ask) => "revision" in ask && ask.revision)).toEqual([1, 3]);
  });

  test("a flick while an edit waits goes along with the edit", () => {
    const { analyst, workers } = setUp();
    analyst.ask(analyse(1));
    analyst.ask(analyse(2));
    analyst.ask(present(2, "on"));
    workers[0]!.tell(failed(1));
    expect(workers[0]!.got.at(-1)).toMatchObject({ type: "analyse", revision: 2, positions: { s1: "on" } });
  });

  test("of several flicks the last is solved", () => {
    const { analyst, workers } = setUp();
    analyst.ask(analyse(1));
    workers[0]!.tell(failed(1));
    for (const s1 of ["on", "off", "on"]) analyst.ask(present(1, s1));
    workers[0]!.tell(failed(1));
    expect(workers[0]!.got.slice(1)).toEqual([present(1, "on"), present(1, "on")]);
  });
});

describe("questions besides", () => {
  test("are answered each on its own, whatever the order", async () => {
    const { analyst, workers } = setUp();
    const first = analyst.consult("clamp", { wire: "w1" }, {});
    const second = analyst.consult("clamp", { wire: "w2" }, {});
    workers[0]!.tell({ type: "consulted", number: 2, answer: { says: "amps", value: 2 } });
    workers[0]!.tell({ type: "consulted", number: 1, answer: { says: "amps", value: 1 } });
    expect([await first, await second]).toEqual([
      { says: "amps", value: 1 },
      { says: "amps", value: 2 },
    ]);
  });

  test("have no answer when the worker dies over them", async () => {
    const { analyst, workers } = setUp();
    const asked = analyst.consult("faults", {}, {});
    workers[0]!.crash();
    expect(await asked).toBeUndefined();
  });
});

describe("a worker that dies", () => {
  test("is replaced, said so, and asked again", () => {
    const { analyst, workers, news } = setUp();
    analyst.ask(analyse(1));
    workers[0]!.crash();
    expect(news).toEqual([{ type: "restarted" }]);
    expect(workers[0]!.isEnded).toBe(true);
    expect(workers[1]!.got).toMatchObject([{ type: "analyse", revision: 1 }]);
  });

  test("or falls silent is replaced too", () => {
    const { analyst, workers } = setUp();
    analyst.ask(analyse(1));
    vi.advanceTimersByTime(1001);
    expect(workers).toHaveLength(2);
  });

  test("again and again over the same drawing is left alone until the next edit", () => {
    const { analyst, workers, news } = setUp();
    analyst.ask(analyse(1));
    for (let i = 0; i < 3; i += 1) workers.at(-1)!.crash();
    expect(news.at(-1)).toMatchObject({ type: "stuck" });
    const started = workers.length;
    analyst.ask(present(1, "on"));
    expect(workers).toHaveLength(started);
    analyst.ask(analyse(2));
    expect(workers.at(-1)!.got).toMatchObject([{ type: "analyse", revision: 2 }]);
  });
});
