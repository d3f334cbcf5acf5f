export { diagnose, type Blame } from "./diagnose.ts";
