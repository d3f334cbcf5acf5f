import { describe, expect, test } from "vitest";
import { buildNetlist } from "../../core/netlist/index.ts";
import { conditionInWords } from "../../core/positions/condition.ts";
import { digitsOf } from "../../core/positions/groups.ts";
import { TruthTable } from "../../core/positions/truth-table.ts";
import { circuit } from "../support/circuit.ts";

const netlist = buildNetlist(
  circuit([
    "bat:battery > a:switch > b:switch > c:switch > ground",
    "bat.+ > key:key > ground",
    "bat.+ > x:changeover > ground",
  ]),
);
type Set = Readonly<Record<string, string>>;

/** The words for the combinations of some controls in which `holds`; `settled` leaves some out. */
function words(
  ids: readonly string[],
  holds: (set: Set) => boolean,
  settled: (set: Set) => boolean = () => true,
): string {
  const controls = ids.map((id) => netlist.controls.findIndex((control) => control.id === id));
  const size = controls.reduce((product, control) => product * netlist.controls[control]!.positions.length, 1);
  const truth = new TruthTable(size);
  const known = new TruthTable(size);
  for (let index = 0; index < size; index++) {
    const digits = digitsOf(netlist, controls, index);
    const set = Object.fromEntries(ids.map((id, at) => [id, netlist.controls[controls[at]!]!.positions[digits[at]!]!]));
    if (holds(set)) truth.add(index);
    if (settled(set)) known.add(index);
  }
  return conditionInWords(netlist, controls, truth, known);
}

describe("a condition in words", () => {
  test("names only the controls that matter", () => {
    expect(words(["a", "b", "c"], ({ b }) => b === "on")).toBe("b is on");
    expect(words(["engine", "a"], ({ a }) => a === "off")).toBe("a is off");
  });

  test("says always and never at the ends", () => {
    expect(words(["a", "b"], () => true)).toBe("always");
    expect(words(["a", "b"], () => false)).toBe("never");
  });

  test("joins what must hold together with and, what may hold either way with or", () => {
    expect(words(["a", "b", "c"], ({ a, b }) => a === "on" && b === "off")).toBe("a is on and b is off");
    expect(words(["a", "b", "c"], ({ a, c }) => a === "on" || c === "on")).toBe("a is on, or c is on");
    expect(words(["a", "b", "c"], ({ a, b, c }) => a === "on" && (b === "on" || c === "on"))).toBe(
      "a is on and b is on, or a is on and c is on",
    );
  });

  test("puts positions of one control together, and says what it is not where that is shorter", () => {
    expect(words(["key"], ({ key }) => key === "accessory" || key === "on")).toBe("key is accessory or on");
    expect(words(["key"], ({ key }) => key !== "start")).toBe("key is not start");
    expect(words(["x", "a"], ({ x }) => x !== "off")).toBe("x is not off");
  });

  test("finds the two cases of one switch against another", () => {
    expect(words(["a", "b"], ({ a, b }) => a !== b)).toBe("a is on and b is off, or a is off and b is on");
  });

  test("lets combinations of which nothing is known go either way", () => {
    const known = ({ a, b }: Set) => !(a === "on" && b === "on");
    expect(words(["a", "b"], ({ a, b }) => a === "on" && b === "off", known)).toBe("a is on");
  });
});
