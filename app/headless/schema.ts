import { circuitJsonSchema } from "../../core/file/index.ts";
import type { Io } from "./io.ts";

/** `schema`: prints the JSON Schema of the circuit file, from the definitions that check one on opening. */
export function run(_argv: readonly string[], io: Io): Promise<number> {
  io.out(`${JSON.stringify(circuitJsonSchema(), null, 2)}\n`);
  return Promise.resolve(0);
}
