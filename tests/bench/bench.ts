import type { Io } from "../../app/headless/io.ts";
import { benchSolver } from "./solver.ts";

/** Prints what the core costs. Reports only: nothing fails here. */
export function run(_argv: readonly string[], io: Io): number {
  benchSolver((line) => io.out(`${line}\n`));
  return 0;
}
