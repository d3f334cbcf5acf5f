import { box, letters, line } from "./drawing.ts";
import { CHASSIS } from "./elements.ts";
import { frameMark } from "./glyphs.ts";
import { milliohms } from "./limits.ts";
import { definePart } from "./part-kind.ts";
import { choice, quantity } from "./setting.ts";
import { terminal } from "./terminal.ts";

/** A point on the vehicle's frame or body; all of them are one node. */
export const chassis = definePart({
  kind: "chassis",
  title: "Chassis point",
  words: ["frame", "body", "earth", "ground", "ground screw", "earth point", "ground point"],
  shelf: "grounds",
  letter: "g",
  about: "A wire made fast to the vehicle's own metal.",
  settings: {
    jointMilliohm: quantity("Joint resistance", "mohm", 0, {
      ...milliohms,
      help: "Of the joint between ring and metal.",
    }),
    surface: choice("Surface", "clean", "Bare clean metal holds; a screw through paint fails within months.", [
      { value: "clean", label: "Bare clean metal" },
      { value: "painted", label: "Painted" },
      { value: "unknown", label: "Not known" },
    ]),
  },
  terminals: () => [
    terminal({ name: "g", x: 0, y: 0, exit: "up", about: "joint to the chassis" }, "ground-screw", "covered", "bare"),
  ],
  symbol: ({ surface }) => [
    line([
      [0, 0],
      [0, 1],
    ]),
    ...frameMark(0, 1, 0.8),
    ...(surface === "clean" ? [] : [letters(0.6, 0.5, surface === "painted" ? "P" : "?", 0.5)]),
  ],
  bounds: () => box(-1.25, 0, 1, 1.75),
  model: ({ jointMilliohm }) => [{ type: "link", a: "g", b: CHASSIS, ohm: jointMilliohm / 1000 }],
  facts: ({ surface }) => ({ surface }),
  caption: () => "",
});
