export { possibleFaults, type Fault } from "./fault.ts";
export { faultedNet } from "./faulted-net.ts";
export { runDrill, type Drill, type DrillSituation, type LoadChange, type Stop } from "./run-drill.ts";
export type { TellingReading } from "./telling-reading.ts";
