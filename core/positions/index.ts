export * from "./types.ts";
export { standingOf } from "./standing-of.ts";
