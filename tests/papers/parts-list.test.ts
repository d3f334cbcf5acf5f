import { expect, test } from "vitest";
import { partsList } from "../../core/papers/parts-list.ts";
import { awningLamps } from "./support/awning-lamps.ts";
import { readCsv } from "./support/read-csv.ts";
import { a5, sourceOf } from "./support/source.ts";

const [head, ...rows] = readCsv(partsList.make(sourceOf(awningLamps), a5));

test("parts alike are ordered together, with every place they go", () => {
  expect(head).toEqual(["quantity", "what", "rating", "where_used", "substitute"]);
  expect(rows.find(([, what]) => what === "Lamp")).toEqual([
    "2",
    "Lamp",
    "36 W",
    "LA1 Awning left, LA2 Awning right",
    "any for 12 V, 36 W or less",
  ]);
});

test("a relay is described by pins, contacts and suppression, so that any like it will do", () => {
  expect(rows.find(([, what]) => what === "Relay, changeover, 5 pins")![4]).toBe(
    "any 5-pin 12 V relay with the same pins, 30 A or more on 87, 20 A or more on 87a at 85 °C, suppressed or not",
  );
});

test("every part and every joint of the drawing is counted once", () => {
  const count = (isTerminal: boolean) =>
    rows
      .filter(([, what]) => !what!.startsWith("Spare"))
      .filter(([, what]) => what!.startsWith("Terminal") === isTerminal)
      .reduce((sum, [quantity]) => sum + Number(quantity), 0);
  expect(count(false)).toBe(awningLamps.parts.length);
  // 22 wire ends; f1.2 and k1.87 hold two wires in one barrel each.
  expect(count(true)).toBe(20);
});

test("a spare of each fuse goes with the vehicle, never a larger one", () => {
  expect(rows.find(([, what]) => what === "Spare fuse, blade")).toEqual([
    "1",
    "Spare fuse, blade",
    "15 A",
    "F1 Lamps",
    "none larger",
  ]);
});
