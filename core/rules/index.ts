export * from "./rule.ts";
