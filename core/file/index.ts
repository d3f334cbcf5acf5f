export { readCircuitFile, type ReadResult } from "./read-circuit-file.ts";
export { writeCircuitFile } from "./write-circuit-file.ts";
export { circuitJsonSchema } from "./json-schema.ts";
