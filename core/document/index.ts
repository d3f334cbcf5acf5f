export * from "./types.ts";
export * from "./edits.ts";
export * from "./system.ts";
export * from "./history.ts";
