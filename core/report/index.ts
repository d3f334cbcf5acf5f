export * from "./types.ts";
export { buildReport } from "./build-report.ts";
