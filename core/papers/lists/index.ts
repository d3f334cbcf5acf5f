export * from "./device-rows.ts";
export * from "./ground-rows.ts";
export * from "./relay-rows.ts";
export * from "./standing.ts";
