import { count, ratingAmps } from "./limits.ts";
import { rating, whole } from "./setting.ts";

/** Settings of a strip or bar of posts that are one piece of metal. */
export function barSettings() {
  return {
    posts: whole("Posts", 6, { ...count, help: "Studs or screws to fix wires to." }),
    ratedA: rating("Rating", "A", { ...ratingAmps, help: "What the whole bar may carry." }),
  };
}

/** Names of the posts: "1" up to the count. */
export function postNames(posts: number): string[] {
  return Array.from({ length: posts }, (_, at) => `${at + 1}`);
}
