import { describe, expect, test } from "vitest";
import { readCircuitFile, writeCircuitFile } from "../../core/file/index.ts";

const mine = { note: "kept", list: [1, { deep: null }], flag: false };

/** A file with a key nobody knows wherever one can stand. */
const file = {
  format: "groundstrap",
  version: 1,
  mine,
  sheet: { title: "Trailer", mine },
  system: { nominalV: 12, mine },
  parts: [
    { id: "bat", kind: "battery", at: [0, 0], mine, props: { restV: 12.7, mine } },
    { id: "x1", kind: "fuse-block", at: [8, 0], props: { ways: [{ ratingA: 5, mine }] }, covers: { "1": "covered" } },
  ],
  wires: [
    { id: "w1", from: "bat.+", to: "x1.feed", metres: 0.1, mine, ends: { from: { terminal: "ring", mine }, mine } },
  ],
  situations: [{ id: "a", set: { engine: "running" }, mine }],
};

function saved(text: string): unknown {
  const opened = readCircuitFile(text);
  if (!opened.ok) throw new Error(opened.error);
  return JSON.parse(writeCircuitFile(opened.document));
}

describe("opening and saving", () => {
  test("keeps every key nobody knows, where it was", () => {
    expect(saved(JSON.stringify(file))).toEqual(file);
  });

  test("keeps the order of keys, parts and wires", () => {
    expect(JSON.stringify(saved(JSON.stringify(file)))).toBe(JSON.stringify(file));
  });

  test("drops names that reach into the language, at any depth, and touches nothing else", () => {
    const text = JSON.stringify(file).replaceAll('"mine":', '"__proto__":{"polluted":1},"constructor":{"x":1},"mine":');
    expect(saved(text)).toEqual(file);
    expect(({} as Record<string, unknown>)["polluted"]).toBeUndefined();
  });

  test("gives a part without a place one, and leaves given places alone", () => {
    const { at: _, ...unplaced } = file.parts[1]!;
    const again = saved(JSON.stringify({ ...file, parts: [file.parts[0], unplaced] })) as typeof file;
    expect(again.parts[0]).toEqual(file.parts[0]);
    expect(again.parts[1]!.at).toEqual([expect.any(Number), expect.any(Number)]);
  });

  test("reads quarter turns as degrees", () => {
    const parts = [{ ...file.parts[0], turn: 1 }, file.parts[1]];
    expect(saved(JSON.stringify({ ...file, parts }))).toMatchObject({ parts: [{ turn: 90 }, {}] });
  });
});
