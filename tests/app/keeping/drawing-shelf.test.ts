import { describe, expect, test } from "vitest";
import { DrawingShelf } from "../../../app/keeping/drawing-shelf.ts";
import { memoryKeyValue, type KeyValue } from "../../../app/keeping/key-value.ts";
import { lampCircuit } from "../drawing.ts";

const DAY_MS = 24 * 3600 * 1000;

function setUp(kept: KeyValue = memoryKeyValue()) {
  const clock = { nowMs: 1000 };
  return { shelf: new DrawingShelf(kept, () => clock.nowMs), clock, kept };
}

describe("drawings kept in the browser", () => {
  test("come back as they were kept", async () => {
    const { shelf } = setUp();
    expect(await shelf.keep("a", lampCircuit, 0)).toEqual({ status: "kept", save: 1, atMs: 1000 });
    const opened = await shelf.open("a");
    expect("document" in opened && opened.document).toEqual(lampCircuit);
  });

  test("are listed with the newest opened first", async () => {
    const { shelf, clock } = setUp();
    await shelf.keep("a", lampCircuit, 0);
    clock.nowMs = 2000;
    await shelf.keep("b", lampCircuit, 0);
    clock.nowMs = 3000;
    await shelf.open("a");
    expect((await shelf.list()).map((entry) => entry.id)).toEqual(["a", "b"]);
  });

  test("a save made from an older state is refused and overwrites nothing", async () => {
    const { shelf } = setUp();
    await shelf.keep("a", lampCircuit, 0);
    await shelf.keep("a", { ...lampCircuit, sheet: { title: "Theirs" } }, 1);
    expect(await shelf.keep("a", { ...lampCircuit, sheet: { title: "Mine" } }, 1)).toEqual({ status: "conflict" });
    expect((await shelf.list())[0]!.title).toBe("Theirs");
  });

  test("full storage is told apart from storage that is switched off", async () => {
    const refusing = (name: string): KeyValue => ({
      ...memoryKeyValue(),
      update: () => Promise.reject(Object.assign(new Error(name), { name })),
    });
    expect(await setUp(refusing("QuotaExceededError")).shelf.keep("a", lampCircuit, 0)).toMatchObject({
      status: "refused",
      reason: expect.stringContaining("room"),
    });
    expect(await setUp(refusing("SecurityError")).shelf.keep("a", lampCircuit, 0)).toMatchObject({ status: "refused" });
  });

  test("a newer version than known is refused with a line, and its text can still be had", async () => {
    const { shelf, kept } = setUp();
    await shelf.keep("a", lampCircuit, 0);
    await kept.update("drawing a", (old) => ({
      ...(old as object),
      text: '{"format":"groundstrap","version":2,"parts":[],"wires":[]}',
    }));
    expect(await shelf.open("a")).toMatchObject({ error: expect.stringContaining("version") });
    expect(await shelf.textOf("a")).toContain('"version":2');
  });

  test("a deleted one can be brought back for 30 days", async () => {
    const { shelf, clock } = setUp();
    await shelf.keep("a", lampCircuit, 0);
    await shelf.remove("a");
    expect(await shelf.list()).toEqual([]);
    clock.nowMs += 29 * DAY_MS;
    await shelf.tidy();
    await shelf.restore("a");
    expect((await shelf.list()).map((entry) => entry.id)).toEqual(["a"]);
    await shelf.remove("a");
    clock.nowMs += 31 * DAY_MS;
    await shelf.tidy();
    expect(await shelf.list({ deleted: true })).toEqual([]);
  });

  test("know whether a file has them as they are", async () => {
    const { shelf } = setUp();
    await shelf.keep("a", lampCircuit, 0);
    expect((await shelf.list())[0]!.fileSave).toBeNull();
    await shelf.markSavedToFile("a", 1);
    await shelf.keep("a", lampCircuit, 1);
    expect((await shelf.list())[0]).toMatchObject({ fileSave: 1, save: 2 });
  });
});
