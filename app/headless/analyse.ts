import type { Io } from "./io.ts";

export async function run(argv: readonly string[], io: Io): Promise<number> {
  const bytes = await io.read(argv[0] ?? "-");
  io.out(`analyse: ${bytes.length} bytes\n`);
  return 0;
}
