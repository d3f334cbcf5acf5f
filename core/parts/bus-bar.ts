import { barSettings, postNames } from "./bar.ts";
import { box, corners, letters, line, outline, ring } from "./drawing.ts";
import { definePart } from "./part-kind.ts";
import { bareStud } from "./terminal.ts";
import { amount } from "./wording.ts";

/** Where post number `at` (from 0) comes out: the first on the left, the others on the right. */
function place(at: number): { readonly x: number; readonly y: number; readonly exit: "left" | "right" } {
  return at === 0 ? { x: 0, y: 0, exit: "left" } : { x: 2, y: 2 * at, exit: "right" };
}

/** One bar that spreads a feed: all posts are one node, bare unless covered. */
export const busBar = definePart({
  kind: "bus-bar",
  title: "Bus bar",
  words: ["distribution bar", "power post", "junction block", "positive bus", "stud block"],
  shelf: "joints",
  letter: "x",
  about: "A bar of posts that spreads a feed; its metal is open unless you cover it.",
  settings: barSettings(),
  terminals: ({ posts }) => postNames(posts).map((name, at) => bareStud({ name, ...place(at), about: `post ${name}` })),
  symbol: ({ posts }) => [
    outline(corners(0.5, -0.8, 1.5, 2 * posts - 1), "thick"),
    ...postNames(posts).flatMap((name, at) => {
      const { x, y, exit } = place(at);
      return [
        line([
          [x, y],
          [exit === "left" ? 0.5 : 1.5, y],
        ]),
        ring(1, y, 0.25),
        letters(1, y + 0.65, name, 0.5),
      ];
    }),
  ],
  bounds: ({ posts }) => box(0, -1, 2, 2 * posts - 1),
  model: ({ posts }) => [{ type: "bar", terminals: postNames(posts) }],
  facts: ({ ratedA }) => ({ ratedA }),
  caption: ({ ratedA }) => (ratedA === null ? "" : amount(ratedA, "A")),
});
