import { describe, expect, test } from "vitest";
import { readCircuitFile } from "../../core/file/index.ts";

type Json = Record<string, unknown>;

/** A small sound file, a battery and a switched lamp, with something put over it. */
function file(over: Json = {}): Json {
  return {
    format: "groundstrap",
    version: 1,
    parts: [
      { id: "bat", kind: "battery" },
      { id: "f1", kind: "fuse", props: { ratingA: 10 } },
      { id: "s1", kind: "switch" },
      { id: "la1", kind: "lamp", props: { watts: 50 } },
    ],
    wires: [
      { id: "w1", from: "bat.+", to: "f1.1", size: "14 AWG", metres: 0.15 },
      { id: "w2", from: "f1.2", to: "s1.1" },
      { id: "w3", from: "s1.2", to: "la1.+" },
      { id: "w4", from: "la1.-", to: "bat.-" },
    ],
    situations: [{ id: "working", set: { engine: "running", s1: "on" } }],
    ...over,
  };
}

function withPart(part: Json): Json {
  return file({ parts: [...(file()["parts"] as Json[]), part] });
}

function withWire(over: Json): Json {
  return file({ wires: [...(file()["wires"] as Json[]), { id: "w9", from: "bat.+", to: "s1.1", ...over }] });
}

function errorOf(input: Json | string | Uint8Array): string {
  const opened = readCircuitFile(
    typeof input === "string" || input instanceof Uint8Array ? input : JSON.stringify(input),
  );
  if (opened.ok) throw new Error("the file was accepted");
  return opened.error;
}

const proto = '{ "id": "__proto__", "kind": "battery" }';
const inText = (json: string) => JSON.stringify(file()).replace('"parts":[', `"parts":[${json},`);
const deep = (levels: number) => `${'{"a":'.repeat(levels)}1${"}".repeat(levels)}`;

/** What is wrong, the file, and the key the refusal must name. */
const refused: [string, Json | string | Uint8Array, string][] = [
  ["nothing at all", "", "the file"],
  ["no JSON", "{ parts: ", "the file"],
  ["a list", "[]", "the file"],
  ["null", "null", "the file"],
  ["a number", "1", "the file"],
  ["text", '"x"', "the file"],
  ["bytes that are not UTF-8", Uint8Array.of(0x7b, 0x22, 0xff, 0xfe, 0x22, 0x7d), "the file"],
  ["over 5 MB", JSON.stringify(file({ padding: Array.from({ length: 600 }, () => "x".repeat(9000)) })), "the file"],
  ["no format", file({ format: undefined }), "format"],
  ["another format", file({ format: "other" }), "format"],
  ["no version", file({ version: undefined }), "version"],
  ["a newer version", file({ version: 2 }), "version"],
  ["a version in text", file({ version: "1" }), "version"],
  ["version 0", file({ version: 0 }), "version"],
  ["no parts", file({ parts: undefined }), "parts"],
  ["parts that are no list", file({ parts: {} }), "parts"],
  ["no wires", file({ wires: undefined }), "wires"],
  ["a part that is no object", file({ parts: [null], wires: [] }), "parts[0]"],
  ["a part without an id", withPart({ kind: "battery" }), "parts[4].id"],
  ["a part without a kind", withPart({ id: "x" }), "parts[4].kind"],
  ["an unknown kind", withPart({ id: "x", kind: "flux-capacitor" }), "parts[4].kind"],
  ["a kind called constructor", withPart({ id: "x", kind: "constructor" }), "parts[4].kind"],
  ["a repeated part id", withPart({ id: "bat", kind: "battery" }), "parts[4].id"],
  ["a wire named as a part", withWire({ id: "bat" }), "wires[4].id"],
  ["a repeated wire id", withWire({ id: "w1" }), "wires[4].id"],
  ["an id with a dot", withPart({ id: "a.b", kind: "battery" }), "parts[4].id"],
  ["an id with a space", withPart({ id: "a b", kind: "battery" }), "parts[4].id"],
  ["an empty id", withPart({ id: "", kind: "battery" }), "parts[4].id"],
  ["an id over 64 characters", withPart({ id: "a".repeat(65), kind: "battery" }), "parts[4].id"],
  ["__proto__ as id", inText(proto), "parts[0].id"],
  ["prototype as id", withPart({ id: "prototype", kind: "battery" }), "parts[4].id"],
  ["constructor as id", withPart({ id: "constructor", kind: "battery" }), "parts[4].id"],
  ["constructor as wire id", withWire({ id: "constructor" }), "wires[4].id"],
  ["constructor as situation id", file({ situations: [{ id: "constructor" }] }), "situations[0].id"],
  ["a wire end at an unknown part", withWire({ to: "ghost.1" }), "wires[4].to"],
  ["a wire end at an unknown terminal", withWire({ to: "s1.3" }), "wires[4].to"],
  ["a wire end at a terminal this relay lacks", withWire({ from: "la1.87a" }), "wires[4].from"],
  ["a wire end without a terminal", withWire({ to: "s1" }), "wires[4].to"],
  ["a wire end at an inherited name", withWire({ to: "s1.constructor" }), "wires[4].to"],
  ["a wire without an end", withWire({ to: undefined }), "wires[4].to"],
  ["a number not finite", JSON.stringify(withWire({ metres: 77 })).replace("77", "1e999"), "wires[4].metres"],
  ["a negative number not finite", JSON.stringify(file({ extra: 77 })).replace("77", "-1e999"), "extra"],
  ["metres under 0", withWire({ metres: -1 }), "wires[4].metres"],
  ["metres over 1000", withWire({ metres: 1000.1 }), "wires[4].metres"],
  ["metres in text", withWire({ metres: "3" }), "wires[4].metres"],
  ["a size nobody sells", withWire({ size: "16 gauge" }), "wires[4].size"],
  ["a bundle of a half", withWire({ bundle: 1.5 }), "wires[4].bundle"],
  ["posts over 64", withPart({ id: "g", kind: "ground-strip", props: { posts: 65 } }), "parts[4].props.posts"],
  ["posts under 1", withPart({ id: "g", kind: "ground-strip", props: { posts: 0 } }), "parts[4].props.posts"],
  ["posts not whole", withPart({ id: "g", kind: "bus-bar", props: { posts: 2.5 } }), "parts[4].props.posts"],
  ["ways over 64", withPart({ id: "p", kind: "plug", props: { ways: 65 } }), "parts[4].props.ways"],
  ["a block without ways", withPart({ id: "x", kind: "fuse-block", props: { ways: [] } }), "parts[4].props.ways"],
  ["a rating under 0", withPart({ id: "x", kind: "fuse", props: { ratingA: -5 } }), "parts[4].props.ratingA"],
  ["a rating of 0", withPart({ id: "x", kind: "fuse", props: { ratingA: 0 } }), "parts[4].props.ratingA"],
  [
    "a way's rating under 0",
    withPart({ id: "x", kind: "fuse-block", props: { ways: [{}, { ratingA: -1 }] } }),
    "parts[4].props.ways[1].ratingA",
  ],
  ["a choice nobody offers", withPart({ id: "x", kind: "lamp", props: { type: "gas" } }), "parts[4].props.type"],
  ["a flag in text", withPart({ id: "x", kind: "fuse", props: { fitted: "no" } }), "parts[4].props.fitted"],
  [
    "efficiency over 1",
    withPart({ id: "x", kind: "converter", props: { efficiency: 1.1 } }),
    "parts[4].props.efficiency",
  ],
  ["props that are a list", withPart({ id: "x", kind: "lamp", props: [] }), "parts[4].props"],
  ["a cover nobody makes", withPart({ id: "x", kind: "lamp", covers: { "+": "tape" } }), "parts[4].covers.+"],
  ["a turn of 45", withPart({ id: "x", kind: "lamp", turn: 45 }), "parts[4].turn"],
  ["a place of one number", withPart({ id: "x", kind: "lamp", at: [1] }), "parts[4].at"],
  ["36 V", file({ system: { nominalV: 36 } }), "system.nominalV"],
  ["an unknown control", file({ situations: [{ id: "a", set: { ghost: "on" } }] }), "situations[0].set.ghost"],
  ["a part without a control", file({ situations: [{ id: "a", set: { la1: "on" } }] }), "situations[0].set.la1"],
  [
    "an inherited name as control",
    file({ situations: [{ id: "a", set: { toString: "on" } }] }),
    "situations[0].set.toString",
  ],
  ["an unknown position", file({ situations: [{ id: "a", set: { s1: "up" } }] }), "situations[0].set.s1"],
  ["a position of the engine", file({ situations: [{ id: "a", set: { engine: "on" } }] }), "situations[0].set.engine"],
  ["rest that sets something", file({ situations: [{ id: "rest", set: { s1: "on" } }] }), "situations[0].set"],
  ["rest that sets its rest", file({ situations: [{ id: "rest", set: { s1: "off" } }] }), "situations[0].set"],
  ["a repeated situation", file({ situations: [{ id: "a" }, { id: "a" }] }), "situations[1].id"],
  ["a string over 10 000", file({ sheet: { title: "x".repeat(10_001) } }), "sheet.title"],
  ["an unknown string over 10 000", file({ mine: { deep: ["x".repeat(10_001)] } }), "mine.deep[0]"],
  ["nesting without end", deep(100_000), "a.a"],
];

describe("what can't be used is refused in one line that names the key", () => {
  test.each(refused)("%s", (_, input, key) => {
    const error = errorOf(input);
    expect(error).toContain(`${key}`);
    expect(error.length).toBeLessThanOrEqual(300);
    expect(error).not.toMatch(/[\r\n]/);
    expect(error).toMatch(/: got .+, wanted .+/);
  });

  test("values of any length and sort are quoted with at most 60 characters, on one line", () => {
    const long = "ab \n\u2028\t\u0000\u001b[31m\u009b".repeat(500);
    for (const input of [
      withPart({ id: long, kind: "battery" }),
      withPart({ id: "x", kind: long }),
      withWire({ to: long }),
      withWire({ size: long }),
      file({ format: long }),
      file({ situations: [{ id: "a", set: { [long]: long } }] }),
      file({ situations: [{ id: "a", set: { s1: long } }] }),
      withPart({ id: "x", kind: "lamp", props: { type: long } }),
      withPart({ id: "x", kind: "lamp", covers: { [long]: "tape" } }),
    ]) {
      const error = errorOf(input);
      expect(error.length).toBeLessThanOrEqual(300);
      expect(error).not.toMatch(/[\p{Cc}\p{Zl}\p{Zp}]/u);
      for (const quoted of error.match(/"[^"]*"?/g) ?? []) expect(quoted.length).toBeLessThanOrEqual(62);
    }
  });
});

describe("what can be used is", () => {
  test.each<[string, Json | string | Uint8Array]>([
    ["a byte-order mark", `\ufeff${JSON.stringify(file())}`],
    ["a byte-order mark in bytes", new TextEncoder().encode(`\ufeff${JSON.stringify(file())}`)],
    ["only what is required", { format: "groundstrap", version: 1, parts: [], wires: [] }],
    ["rest that sets nothing", file({ situations: [{ id: "rest", name: "All off", set: {} }] })],
    ["an id of 64 characters", withPart({ id: "a".repeat(64), kind: "battery" })],
    ["ids with names of JavaScript's own methods", withPart({ id: "hasOwnProperty", kind: "battery" })],
    ["a string of 10 000", file({ sheet: { notes: "x".repeat(10_000) } })],
    ["metres at both ends of their range", file({ wires: [{ id: "a", from: "bat.+", to: "f1.1", metres: 1000 }] })],
    ["a part without a place", file()],
    ["ratings nobody knows, said as null", withPart({ id: "x", kind: "fuse", props: { ratingA: null } })],
    ["forbidden names as unknown keys", JSON.stringify(file()).replace("{", '{"__proto__":{"x":1},"constructor":2,')],
  ])("%s", (_, input) => {
    const opened = readCircuitFile(
      typeof input === "string" || input instanceof Uint8Array ? input : JSON.stringify(input),
    );
    expect(opened).toMatchObject({ ok: true });
  });
});
