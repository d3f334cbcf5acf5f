import { box, dot, line, outline } from "./drawing.ts";
import { definePart } from "./part-kind.ts";
import { text, unsaidChoice } from "./setting.ts";
import { terminal } from "./terminal.ts";

const barrelForm =
  /^(?:red|blue|yellow|\d{1,3}(?:\.\d{1,3})?(?: ?mm2)?(?: ?(?:-|–|to) ?\d{1,3}(?:\.\d{1,3})? ?mm2)?)$/u;

/** A place where wires are joined. */
export const splice = definePart({
  kind: "splice",
  title: "Splice",
  words: ["joint", "butt splice", "tap", "junction", "solder joint", "crimp"],
  shelf: "joints",
  letter: "j",
  about: "Wires joined to one another: a crimp, a soldered joint, a tap into a wire.",
  settings: {
    barrel: text(
      "Barrel",
      'What its barrel takes: red, blue, yellow, or a range such as "1.5-2.5 mm2".',
      barrelForm,
      'red, blue, yellow, or a range such as "1.5-2.5 mm2"',
    ),
    tap: unsaidChoice("Made by", "How the joint is made.", [
      { value: "crimp", label: "Crimp" },
      { value: "solder", label: "Solder" },
      { value: "piercing", label: "Piercing tap" },
    ]),
  },
  terminals: () => [
    {
      ...terminal({ name: "s", x: 0, y: 0, exit: "right", about: "joint" }, "joint", "covered", "bare"),
      anyExit: true,
    },
  ],
  symbol: ({ tap }) => [
    dot(0, 0, 0.2),
    ...(tap === "piercing"
      ? [
          outline(
            [
              [-0.4, -0.4],
              [0.4, -0.4],
              [0.4, 0.4],
              [-0.4, 0.4],
            ],
            "thin",
          ),
          line(
            [
              [0, -0.5],
              [0, 0],
            ],
            "thin",
          ),
        ]
      : []),
  ],
  bounds: () => box(-0.5, -0.5, 0.5, 0.5),
  model: () => [{ type: "bar", terminals: ["s"] }],
  facts: ({ barrel, tap }) => ({ splice: { barrel, tap } }),
  caption: () => "",
});
