import type { Stroke } from "../geometry/index.ts";
import { box, corners, letters, line, outline } from "./drawing.ts";
import { count, milliohms, ratingAmps } from "./limits.ts";
import { definePart } from "./part-kind.ts";
import { quantity, rating, texts, unsaidChoice, whole } from "./setting.ts";
import { terminal } from "./terminal.ts";
import { amount } from "./wording.ts";

type Sort = "pins" | "sockets";

function numbers(ways: number): number[] {
  return Array.from({ length: ways }, (_, at) => at + 1);
}

/** A plug and socket: way n joins a(n) to b(n) while it is plugged together. */
export const plug = definePart({
  kind: "plug",
  title: "Plug and socket",
  words: ["connector", "trailer plug", "coupler", "multi-plug", "7-pin", "socket"],
  shelf: "joints",
  letter: "p",
  about: "Two halves that part: a trailer plug, a connector in the loom.",
  settings: {
    ways: whole("Ways", 4, { ...count, help: "Contacts in each half." }),
    ratedA: rating("Rating", "A", { ...ratingAmps, help: "What one contact may carry." }),
    milliohm: quantity("Contact resistance", "mohm", 5, { ...milliohms, help: "Of one mated contact." }),
    fedSide: unsaidChoice(
      "Fed half has",
      "Contacts of the half that stays live when unplugged; pins there can be touched.",
      [
        { value: "sockets", label: "Sockets" },
        { value: "pins", label: "Pins" },
      ],
    ),
    functions: texts("Jobs", "What each way is for, such as left turn; more than one job on a way is a snag."),
  },
  terminals: ({ ways }) => {
    const side = (half: "a" | "b", x: number, exit: "left" | "right") =>
      numbers(ways).map((way) =>
        terminal(
          { name: `${half}${way}`, x, y: 2 * (way - 1), exit, about: `way ${way}, half ${half}` },
          "contact",
          "covered",
          "cavity",
        ),
      );
    return [...side("a", 0, "left"), ...side("b", 4, "right")];
  },
  symbol: ({ ways, fedSide }) => [
    outline(corners(0.7, -1, 1.95, 2 * ways - 1.4), "thin"),
    outline(corners(2.05, -1, 3.3, 2 * ways - 1.4), "thin"),
    ...numbers(ways).flatMap((way) => waySymbol(way, fedSide ?? "sockets")),
  ],
  bounds: ({ ways }) => box(0, -1, 4, 2 * ways - 1),
  model: ({ ways, milliohm }) =>
    numbers(ways).map((way) => ({ type: "link", a: `a${way}`, b: `b${way}`, ohm: milliohm / 1000 })),
  facts: ({ ways, ratedA, fedSide, functions }) => ({
    ratedA,
    plug: {
      fedSide,
      pairs: numbers(ways).map((way) => [`a${way}`, `b${way}`] as const),
      functions: numbers(ways).map((_, at) => jobs(functions[at])),
    },
  }),
  caption: ({ ratedA }) => (ratedA === null ? "" : amount(ratedA, "A")),
});

function jobs(stated: string | readonly string[] | undefined): readonly string[] {
  const several = typeof stated === "string" ? [stated] : (stated ?? []);
  return several.filter((job) => job.trim() !== "");
}

/** A socket is a cup, a pin the bar that goes into it. */
function waySymbol(way: number, fedSide: Sort): Stroke[] {
  const y = 2 * (way - 1);
  const across = fedSide === "sockets" ? (x: number) => x : (x: number) => 4 - x;
  const [start, end] = fedSide === "sockets" ? [90, 270] : [270, 90];
  return [
    line([
      [across(0), y],
      [across(1.3), y],
    ]),
    { shape: "arc", centre: [across(1.6), y], radius: 0.3, start, end, weight: "normal" },
    line(
      [
        [across(1.55), y],
        [across(2.5), y],
      ],
      "thick",
    ),
    line([
      [across(2.5), y],
      [across(4), y],
    ]),
    letters(1.3, y - 0.6, `a${way}`, 0.5),
    letters(2.7, y - 0.6, `b${way}`, 0.5),
  ];
}
