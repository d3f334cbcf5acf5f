import { describe, expect, test } from "vitest";
import { run as analyse } from "../../../app/headless/analyse.ts";
import type { Io } from "../../../app/headless/io.ts";
import { run as paper } from "../../../app/headless/paper.ts";
import type { Document } from "../../../core/document/index.ts";
import { papers } from "../../../core/papers/index.ts";
import { circuit } from "../../support/circuit.ts";

const sound = circuit("bat:battery > f1:fuse 10A > s1:switch > la1:lamp 55W > ground", {
  situations: { working: { s1: "on" } },
});
const unfused = circuit("bat:battery > s1:switch >(14 AWG, 3 m)> la1:lamp 55W > ground");

interface Outcome {
  readonly code: number;
  readonly out: string;
  readonly err: string;
  readonly written: Readonly<Record<string, string>>;
}

/** Runs a command on a machine that holds the given files; "-" is standard input. */
async function outcome(
  run: (argv: readonly string[], io: Io) => Promise<number>,
  argv: readonly string[],
  files: Readonly<Record<string, Document | string>> = {},
): Promise<Outcome> {
  const written: Record<string, string> = {};
  let out = "";
  let err = "";
  const code = await run(argv, {
    read(path) {
      const file = files[path];
      if (file === undefined) return Promise.reject(Object.assign(new Error("gone"), { code: "ENOENT" }));
      return Promise.resolve(new TextEncoder().encode(typeof file === "string" ? file : JSON.stringify(file)));
    },
    write(path, text) {
      written[path] = text;
      return Promise.resolve();
    },
    out: (text) => (out += text),
    err: (text) => (err += text),
  });
  return { code, out, err, written };
}

describe("analyse", () => {
  test("exits 0 with the report when nothing stops the drawing from being powered up", async () => {
    const { code, out, err } = await outcome(analyse, ["a.json", "--json"], { "a.json": sound });
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(JSON.parse(out)).toMatchObject({ format: "groundstrap-report", version: 1 });
    expect(Object.keys(JSON.parse(out).situations)).toEqual(["rest", "working"]);
  });

  test("exits 1 with the whole report when something does", async () => {
    const { code, out } = await outcome(analyse, ["--json", "-"], { "-": unfused });
    expect(code).toBe(1);
    expect(JSON.parse(out).snags).toContainEqual(expect.objectContaining({ rule: "no-fuse", level: "stop" }));
  });

  test("tells the same in words, snags first", async () => {
    const { code, out } = await outcome(analyse, ["-"], { "-": unfused });
    expect(code).toBe(1);
    expect(out).toMatch(/STOP +Nothing protects wire/);
    expect(out).not.toMatch(/NaN|Infinity|undefined|\[object/);
  });

  test.each([
    [["gone.json"], {}],
    [["-"], { "-": "{" }],
    [["-", "--json"], { "-": '{"format":"groundstrap","version":1,"parts":[{"id":"a","kind":"b"}],"wires":[]}' }],
    [[], {}],
    [["a", "b"], { a: sound, b: sound }],
    [["--frob"], {}],
  ])("exits 2 with one line and nothing on standard output: %j", async (argv, files) => {
    const { code, out, err } = await outcome(analyse, argv, files);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(/^[^\n]{1,300}\n$/);
  });
});

describe("paper", () => {
  test.each(papers.map(({ kind }) => [kind]))("writes the %s where it was told to, and nothing else", async (kind) => {
    const argv = ["a.json", "--kind", kind, "--out", "../out/paper.svg"];
    const { code, out, err, written } = await outcome(paper, argv, { "a.json": sound });
    expect({ code, out, err }).toEqual({ code: 0, out: "", err: "" });
    const names = Object.keys(written);
    expect(names.length).toBeGreaterThan(0);
    for (const name of names) expect(name).toMatch(/^\.\.\/out\/paper[^/]*\.svg$/);
  });

  test("lists what changed since another file, or since the revision on record in the file itself", async () => {
    const longer = { ...sound, wires: sound.wires.map((wire) => (wire.id === "w1" ? { ...wire, metres: 3 } : wire)) };
    const argv = ["b.json", "--kind", "change-log", "--out", "x.svg"];
    const files = { "a.json": sound, "b.json": longer };
    const compared = await outcome(paper, [...argv, "--previous", "a.json"], files);
    expect(compared.written["x.svg"]).toContain("metres: 0.1 to 3");
    const alone = await outcome(paper, argv, files);
    expect(alone.written["x.svg"]).toContain("No earlier revision");
    const recorded: Document = { ...longer, revisions: [{ revision: "A", circuit: { ...sound } }] };
    expect((await outcome(paper, argv, { "b.json": recorded })).written["x.svg"]).toContain("metres: 0.1 to 3");
  });

  test("writes nothing when the file to compare with can't be used", async () => {
    for (const previous of [["--previous", "gone.json"], ["--previous", "bad.json"], ["--previous"]]) {
      const argv = ["a.json", "--kind", "change-log", "--out", "x.svg", ...previous];
      const { code, err, written } = await outcome(paper, argv, { "a.json": sound, "bad.json": "[]" });
      expect(code).toBe(2);
      expect(err).toMatch(/^[^\n]+\n$/);
      expect(written).toEqual({});
    }
  });

  test.each(["Vehicle card", "vehicle-card"])("takes a paper's title for its kind: %s", async (kind) => {
    const { code, written } = await outcome(paper, ["-", "--kind", kind, "--out", "x.svg"], { "-": sound });
    expect(code).toBe(0);
    expect(written["x.svg"]).toContain("<svg");
  });

  test("a name without an extension keeps its folders", async () => {
    const { written } = await outcome(paper, ["-", "--kind", "vehicle-card", "--out", "../out.d/card"], { "-": sound });
    expect(Object.keys(written)).toEqual(["../out.d/card"]);
  });

  test.each([
    [["-", "--kind", "vehicle-card", "--out", "x.svg"], { "-": "{}" }],
    [["gone", "--kind", "vehicle-card", "--out", "x.svg"], {}],
    [["-", "--kind", "wallpaper", "--out", "x.svg"], { "-": sound }],
    [["-", "--kind", "vehicle-card"], { "-": sound }],
    [["--kind", "vehicle-card", "--out", "x.svg"], {}],
    [["-", "--out", "x.svg"], { "-": sound }],
  ])("exits 2 with one line and writes nothing: %j", async (argv, files) => {
    const { code, out, err, written } = await outcome(paper, argv, files);
    expect({ code, out, written }).toEqual({ code: 2, out: "", written: {} });
    expect(err).toMatch(/^[^\n]+\n$/);
  });

  test("the card carries the circuit it was made from", async () => {
    const { written } = await outcome(paper, ["-", "--kind", "vehicle-card", "--out", "card.svg"], { "-": sound });
    const again = await outcome(analyse, ["card.svg", "--json"], { "card.svg": written["card.svg"]! });
    const first = await outcome(analyse, ["-", "--json"], { "-": sound });
    expect(again.out).toEqual(first.out);
  });
});
