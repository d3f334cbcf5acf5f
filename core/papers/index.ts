export * from "./paper.ts";
