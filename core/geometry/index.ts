export * from "./stroke.ts";
export * from "./box.ts";
export * from "./turning.ts";
export * from "./segment.ts";
export * from "./route-wire.ts";
export * from "./box-grid.ts";
export * from "./nearby.ts";
export * from "./area.ts";
