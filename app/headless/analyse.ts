import { analyse } from "../../core/analyse.ts";
import type { Io } from "./io.ts";
import { openCircuit, UNUSABLE } from "./open-circuit.ts";
import { reportInWords } from "./report-in-words.ts";

const USAGE = "analyse: wanted FILE [--json]; FILE may be - for standard input\n";

/** `analyse FILE [--json]`: 0 when nothing stops it from being powered up, 1 when something does, 2 when the file can't be used. */
export async function run(argv: readonly string[], io: Io): Promise<number> {
  const json = argv.includes("--json");
  const [path, ...others] = argv.filter((word) => word !== "--json");
  if (path === undefined || others.length > 0 || (path.startsWith("-") && path !== "-")) {
    io.err(USAGE);
    return UNUSABLE;
  }
  const document = await openCircuit(path, io);
  if (!document) return UNUSABLE;
  const { report } = analyse(document);
  io.out(json ? `${JSON.stringify(report)}\n` : reportInWords(document, report));
  return report.snags.some(({ level }) => level === "stop") ? 1 : 0;
}
