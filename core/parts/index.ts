export * from "./elements.ts";
export * from "./facts.ts";
export * from "./part-kind.ts";
export * from "./setting.ts";
export * from "./registry.ts";
export * from "./of-part.ts";
export { elementForms } from "./custom-elements.ts";
export { markLegend, markStrokes, type Mark } from "./marks.ts";
export { changedTo, fitted } from "./fittings.ts";
