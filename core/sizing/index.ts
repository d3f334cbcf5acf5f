export { sizeIt, type Choice, type Proposal } from "./size-it.ts";
export type { Scope } from "./draft.ts";
export type { Unfit } from "./grow.ts";
