import type { Stroke } from "../geometry/index.ts";
import { corners, dashed, letters, line, outline, ring } from "./drawing.ts";
import { blade, diodeBody } from "./glyphs.ts";

type ContactSort = "make" | "changeover" | "twin-make";
type Suppression = "none" | "resistor" | "diode";

/** A relay as its body shows it: contact above, coil below, the pull between them dashed, the numbers of the pins beside them. */
export function relaySymbol(contact: ContactSort, suppression: Suppression, pulledIn: boolean): Stroke[] {
  return [
    outline(corners(1, -1, 5, suppression === "none" ? 6 : 7), "thin"),
    ...(contact === "twin-make" ? twinContacts(pulledIn) : singleContact(contact === "changeover", pulledIn)),
    ...coil(pulledIn),
    ...suppressor(suppression),
    letters(1.55, 0.5, "30"),
    letters(1.55, 4.5, "86"),
    letters(4.45, 4.5, "85"),
    letters(4.4, 2.5, "87"),
  ];
}

function singleContact(changeover: boolean, pulledIn: boolean): Stroke[] {
  const restY = changeover ? 0.05 : 0.35;
  return [
    line([
      [0, 1],
      [2.2, 1],
    ]),
    ...blade(2.2, 1, 3.7, pulledIn ? 1.95 : restY),
    ...fixedContact(2),
    ...(changeover ? [...fixedContact(0), letters(4.3, -0.55, "87a")] : []),
    dashed([
      [3, 4.5],
      [3, pulledIn ? 1.5 : 0.55],
    ]),
  ];
}

function twinContacts(pulledIn: boolean): Stroke[] {
  const tip = pulledIn ? -0.08 : -0.55;
  return [
    line([
      [0, 1],
      [2.2, 1],
    ]),
    line([
      [2.2, 0],
      [2.2, 2],
    ]),
    ...blade(2.2, 0, 3.65, tip),
    ...blade(2.2, 2, 3.65, 2 + tip),
    ...fixedContact(0),
    ...fixedContact(2),
    letters(4.3, -0.55, "87b"),
    dashed([
      [3, 4.5],
      [3, tip / 2],
    ]),
  ];
}

function fixedContact(y: number): Stroke[] {
  return [
    line([
      [3.82, y],
      [6, y],
    ]),
    ring(3.7, y, 0.12),
  ];
}

function coil(pulledIn: boolean): Stroke[] {
  return [
    line([
      [0, 5],
      [2.2, 5],
    ]),
    line([
      [3.8, 5],
      [6, 5],
    ]),
    outline(corners(2.2, 4.5, 3.8, 5.5), pulledIn ? "thick" : "normal"),
  ];
}

function suppressor(suppression: Suppression): Stroke[] {
  if (suppression === "none") return [];
  const [left, right] = [2.5, 3.5];
  const body =
    suppression === "diode"
      ? diodeBody(right - 0.15, left + 0.15, 6.3, 0.3)
      : [outline(corners(left, 6.1, right, 6.5))];
  const [bodyLeft, bodyRight] = suppression === "diode" ? [left + 0.15, right - 0.15] : [left, right];
  return [
    line([
      [1.9, 5],
      [1.9, 6.3],
      [bodyLeft, 6.3],
    ]),
    line([
      [4.1, 5],
      [4.1, 6.3],
      [bodyRight, 6.3],
    ]),
    ...body,
  ];
}
