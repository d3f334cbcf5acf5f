export * from "./flow.ts";
export * from "./frame.ts";
export * from "./ink.ts";
export * from "./lettering.ts";
export * from "./sheet.ts";
export * from "./strip.ts";
export * from "./table.ts";
