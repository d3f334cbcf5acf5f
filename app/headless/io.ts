/** What a headless command may touch of the machine, so that it can be run in a test without one. */
export interface Io {
  /** The bytes of a file, or of standard input for "-". Relative paths start where the person typed the command. */
  read(path: string): Promise<Uint8Array>;
  write(path: string, text: string): Promise<void>;
  out(text: string): void;
  err(text: string): void;
}
