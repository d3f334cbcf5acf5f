import { describe, expect, test } from "vitest";
import { commandsFor, findCommand } from "../../../app/commands/index.ts";
import { createRunner, type Outside } from "../../../app/commands/run-command.ts";
import { whyNot } from "../../../app/commands/command.ts";
import { documentOf } from "../../../app/store/editor-state.ts";
import { readCircuitFile, writeCircuitFile } from "../../../core/file/index.ts";
import type { Document } from "../../../core/document/index.ts";
import { lampCircuit, testEditor } from "../drawing.ts";

function setUp(document: Document = lampCircuit) {
  const { editor } = testEditor(document);
  const clipboard: string[] = [];
  const nothing = () => undefined;
  const outside: Outside = {
    writeClipboard: (text) => void clipboard.push(text),
    readClipboard: async () => clipboard.at(-1) ?? "",
    newDrawing: nothing,
    openFile: nothing,
    saveFile: nothing,
    copyDrawing: nothing,
    openDemo: nothing,
    takeOver: nothing,
  };
  const runner = createRunner(editor, outside);
  const part = (id: string) => documentOf(editor.state).parts.find((one) => one.id === id)!;
  return { editor, runner, clipboard, part };
}

const opens = (document: Document) => readCircuitFile(writeCircuitFile(document)).ok;

describe("the list of commands", () => {
  test("has one command for each id and one command for each key", () => {
    const commands = commandsFor(testEditor().editor.state);
    const keys = commands.flatMap((command) => command.keys ?? []).map((key) => key.toLowerCase());
    expect(new Set(commands.map((command) => command.id)).size).toBe(commands.length);
    expect(new Set(keys).size).toBe(keys.length);
  });

  test("every command answers in an empty drawing, and looking changes nothing", () => {
    const { editor } = testEditor({ format: "groundstrap", version: 1, parts: [], wires: [] });
    const before = editor.state;
    for (const command of commandsFor(editor.state)) expect(command.plan(editor.state)).toBeTypeOf("object");
    expect(editor.state).toBe(before);
  });

  test("one that can't be done says why", () => {
    const { editor, runner } = setUp();
    expect(whyNot(findCommand(editor.state, "turn")!, editor.state)).toBe("No part is selected");
    runner.run("turn");
    expect(editor.state.said.text).toBe("No part is selected");
  });
});

describe("arranging", () => {
  test("turning four times, or flipping twice, brings everything back", () => {
    for (const [command, times] of [
      ["turn", 4],
      ["flip", 2],
      ["turn-back", 4],
    ] as const) {
      const { editor, runner } = setUp();
      editor.select(["f1", "s1"]);
      for (let i = 0; i < times; i += 1) runner.run(command);
      const places = documentOf(editor.state).parts.map((part) => [part.at, part.turn ?? 0, part.flip ?? false]);
      expect(places).toEqual(lampCircuit.parts.map((part) => [part.at, 0, false]));
    }
  });

  test("turning left undoes turning right", () => {
    const { editor, runner, part } = setUp();
    editor.select(["f1", "s1", "la1"]);
    runner.run("turn");
    expect(part("f1").turn).toBe(90);
    runner.run("turn-back");
    expect(part("f1")).toMatchObject({ at: [10, 0], turn: 0 });
  });

  test("lining up and spacing move parts onto one line at even steps", () => {
    const { editor, runner, part } = setUp();
    editor.dispatch({
      label: "Scatter",
      edits: [
        { op: "set-part", id: "f1", change: { at: [10, 3] } },
        { op: "set-part", id: "s1", change: { at: [13, -5] } },
      ],
    });
    editor.select(["f1", "s1"]);
    runner.run("align-left");
    expect(part("f1").at![0]).toBe(part("s1").at![0]);
    editor.select(["b1"]);
    expect(whyNot(findCommand(editor.state, "space-across")!, editor.state)).toBe("Select three parts or more");
  });

  test("arrow keys move the selection by a step", () => {
    const { editor, runner, part } = setUp();
    editor.select(["f1"]);
    runner.run("nudge-right");
    runner.run("nudge-down-far");
    expect(part("f1").at).toEqual([11, 5]);
  });
});

describe("copying", () => {
  test("a duplicate has new ids, the wires between, and stands beside", () => {
    const { editor, runner } = setUp();
    editor.select(["f1", "s1"]);
    runner.run("duplicate");
    const { parts, wires } = documentOf(editor.state);
    expect(parts.slice(4).map((part) => [part.id, part.at])).toEqual([
      ["f2", [12, 2]],
      ["s2", [22, 2]],
    ]);
    expect(wires.at(-1)).toMatchObject({ id: "w5", from: "f2.2", to: "s2.1", size: "14 AWG" });
    expect([...editor.state.selection]).toEqual(["f2", "s2"]);
    expect(opens(documentOf(editor.state))).toBe(true);
  });

  test("cut and paste move through a circuit file on the clipboard", () => {
    const { editor, runner, clipboard } = setUp();
    editor.select(["f1", "s1"]);
    runner.run("cut");
    expect(documentOf(editor.state).parts.map((part) => part.id)).toEqual(["b1", "la1"]);
    runner.pasteText(clipboard[0]!);
    expect(
      documentOf(editor.state)
        .parts.map((part) => part.kind)
        .slice(2),
    ).toEqual(["fuse", "switch"]);
    expect(documentOf(editor.state).parts[2]!.props).toEqual({ ratingA: 10 });
  });

  test("a clipboard of something else adds nothing and says why", () => {
    const { editor, runner } = setUp();
    for (const text of ["", "a shopping list", '{"format":"groundstrap","version":1,"parts":[],"wires":[]}']) {
      runner.pasteText(text);
      expect(editor.state.said.text).toMatch(/^The clipboard holds no/);
    }
    expect(documentOf(editor.state)).toBe(lampCircuit);
  });
});

describe("deleting", () => {
  test("a part goes with its wires; a wire alone leaves its parts", () => {
    const { editor, runner } = setUp();
    editor.select(["s1", "w2", "w1"]);
    runner.run("delete");
    expect(documentOf(editor.state).wires.map((wire) => wire.id)).toEqual(["w4"]);
    expect(editor.state.history.past).toHaveLength(1);
  });
});

describe("adding", () => {
  test("a part lands under the next id, on a free spot, selected", () => {
    const { editor, runner } = setUp();
    runner.run("add relay");
    const added = documentOf(editor.state).parts.at(-1)!;
    expect(added).toMatchObject({ id: "k1", kind: "relay" });
    expect(added.at).toHaveLength(2);
    expect([...editor.state.selection]).toEqual(["k1"]);
  });

  test("on a 24 V vehicle a fresh relay is a 24 V relay", () => {
    const { runner, part } = setUp({ ...lampCircuit, system: { nominalV: 24 } });
    runner.run("add relay");
    expect(part("k1").props).toMatchObject({ pullInV: 16 });
  });
});

describe("controls from the keyboard", () => {
  test("the first nine have number keys, the engine first", () => {
    const commands = commandsFor(testEditor().editor.state);
    expect(commands.find((command) => command.keys?.includes("1"))!.id).toBe("flick engine");
    expect(commands.find((command) => command.keys?.includes("2"))!.id).toBe("flick s1");
  });

  test("a saved situation sets all of them", () => {
    const { editor, runner } = setUp();
    runner.run("flick engine");
    runner.run("situation on");
    expect(editor.state.positions).toEqual({ s1: "on" });
  });
});
