export * from "./stroke.ts";
