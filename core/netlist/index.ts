export * from "./types.ts";
export { buildNetlist } from "./build-netlist.ts";
export { NodeSets } from "./node-sets.ts";
export * from "./combination.ts";
