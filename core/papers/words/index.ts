export * from "./part-words.ts";
export * from "./wire-words.ts";
export * from "./strip-lengths.ts";
