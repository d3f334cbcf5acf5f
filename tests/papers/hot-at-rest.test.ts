import { expect, test } from "vitest";
import { hotAtRest } from "../../core/papers/hot-at-rest.ts";
import { liveRows } from "../../core/papers/lists/index.ts";
import { awningLamps } from "./support/awning-lamps.ts";
import { campervan } from "./support/campervan.ts";
import { textsOf } from "./support/sheet-checks.ts";
import { a5, sourceOf } from "./support/source.ts";

const rows = liveRows(sourceOf(awningLamps)).map((row) => ({ ...row, name: row.name.replaceAll("\u00a0", " ") }));

test("only what is live with everything off is drawn", () => {
  const drawn = textsOf(hotAtRest.make(sourceOf(awningLamps), a5)).map(({ text }) => text);
  expect(drawn.filter((text) => /^w\d/.test(text)).map((text) => text.split(" ")[0])).toEqual(
    expect.arrayContaining(["w1", "w2", "w3"]),
  );
  expect(drawn.filter((text) => /^(w4|w5|w6|w7|w8|w9|w10|w11|LA1|GS)\b/.test(text))).toEqual([]);
});

test("bare metal comes first", () => {
  expect(rows[0]).toMatchObject({ name: "K1 Lamp relay · 87a", isBare: true, about: "BARE METAL, no wire on it" });
});

test("each says what guards it and what makes it dead", () => {
  expect(rows.find(({ name }) => name === "w2")).toMatchObject({ guard: "F1 Lamps", kill: "pull F1 Lamps" });
  expect(rows.find(({ name }) => name === "w1")).toMatchObject({ guard: "NONE", kill: "battery negative off" });
});

test("the device nearest to it is the one to pull", () => {
  const w3 = liveRows(sourceOf(campervan)).find(({ name }) => name === "w3")!;
  expect(w3.kill.replaceAll("\u00a0", " ")).toBe("pull BLK Block · 1");
});

test("two feeds: pulling one fuse is not said to make it dead", () => {
  const second = {
    ...awningLamps,
    parts: [...awningLamps.parts, { id: "f2", kind: "fuse", at: [8, 8] as const, props: { ratingA: 15 } }],
    wires: [...awningLamps.wires, { id: "w12", from: "bat.+", to: "f2.1" }, { id: "w13", from: "f2.2", to: "k1.30" }],
  };
  expect(liveRows(sourceOf(second)).find(({ name }) => name === "w2")!.kill).toBe("battery negative off");
});
