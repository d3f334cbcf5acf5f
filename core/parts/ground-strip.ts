import { barSettings, postNames } from "./bar.ts";
import { box, corners, letters, line, outline, ring } from "./drawing.ts";
import { definePart } from "./part-kind.ts";
import { bareStud } from "./terminal.ts";
import { amount } from "./wording.ts";

/** One strip that gathers the negatives: all posts are one node. */
export const groundStrip = definePart({
  kind: "ground-strip",
  title: "Ground strip",
  words: [
    "earth bar",
    "earth strip",
    "ground bar",
    "ground bus",
    "negative bus bar",
    "common ground",
    "return",
    "earth",
  ],
  shelf: "grounds",
  letter: "g",
  about: "A strip of posts that gathers every negative; one sized wire takes the sum back.",
  settings: barSettings(),
  terminals: ({ posts }) =>
    postNames(posts).map((name, at) => bareStud({ name, x: 2 * at, y: 0, exit: "up", about: `post ${name}` })),
  symbol: ({ posts }) => {
    const right = 2 * posts - 0.9;
    return [
      outline(corners(-0.8, 0.6, right, 1.4)),
      ...postNames(posts).flatMap((name, at) => [
        line([
          [2 * at, 0],
          [2 * at, 0.75],
        ]),
        ring(2 * at, 1, 0.25),
        letters(2 * at + 0.6, 1, name, 0.5),
      ]),
      line([
        [right, 1],
        [right + 0.4, 1],
      ]),
      line([
        [right + 0.4, 0.4],
        [right + 0.4, 1.6],
      ]),
      line([
        [right + 0.65, 0.6],
        [right + 0.65, 1.4],
      ]),
      line([
        [right + 0.9, 0.8],
        [right + 0.9, 1.2],
      ]),
    ];
  },
  bounds: ({ posts }) => box(-1, 0, 2 * posts, 2),
  model: ({ posts }) => [{ type: "bar", terminals: postNames(posts) }],
  facts: ({ ratedA }) => ({ ratedA, returnBar: true }),
  caption: ({ ratedA }) => (ratedA === null ? "" : amount(ratedA, "A")),
});
