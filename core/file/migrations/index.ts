/** The version this program writes, and the newest it can read. */
export const CURRENT_VERSION = 1;

/** Turns a file of version `from` into one of `from + 1`. One file per step; an old example of each is kept in the tests for ever. */
interface Migration {
  readonly from: number;
  migrate(file: Record<string, unknown>): Record<string, unknown>;
}

const migrations: readonly Migration[] = [];

/** The file brought up to `CURRENT_VERSION`, step by step; a version without a step comes back as it is. */
export function migrate(file: Record<string, unknown>): Record<string, unknown> {
  const step = migrations.find(({ from }) => from === file["version"]);
  return step ? migrate(step.migrate(file)) : file;
}
