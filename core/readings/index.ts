export * from "./types.ts";
export { readSituation, readSituations, solveCombination, solverOf, REST } from "./read-situation.ts";
export { ampsThrough, isOn, sourceVolts, voltsBetween } from "./part-reading.ts";
export { solveWithout } from "./solve-without.ts";
export { startSolution } from "./start-reading.ts";
export { daysToHalf, restDeliveries } from "./rest-drain.ts";
