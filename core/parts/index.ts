export * from "./elements.ts";
export * from "./part-kind.ts";
export * from "./setting.ts";
