export * from "./types.ts";
export * from "./edits.ts";
