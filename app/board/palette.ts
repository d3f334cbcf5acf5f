/** The Board's inks, each a CSS colour. Named for what they say, not for how they look. */
export interface Palette {
  readonly paper: string;
  readonly grid: string;
  /** Symbols, wires and names. */
  readonly ink: string;
  /** Captions, terminal markings and wire lettering. */
  readonly faint: string;
  /** Hot in the present situation. */
  readonly hot: string;
  /** Hot at rest, in whatever situation. */
  readonly rest: string;
  readonly ground: string;
  /** A part that is on. */
  readonly on: string;
  readonly stop: string;
  readonly fix: string;
  readonly select: string;
  /** What is about to happen: the ring that attracts, a wire being drawn, a part being placed. */
  readonly preview: string;
}

export const PALETTE_KEYS = [
  "paper",
  "grid",
  "ink",
  "faint",
  "hot",
  "rest",
  "ground",
  "on",
  "stop",
  "fix",
  "select",
  "preview",
] as const satisfies readonly (keyof Palette)[];

/** The palette in force, from the custom properties `--board-paper`, `--board-ink` and so on. */
export function readPalette(style: Pick<CSSStyleDeclaration, "getPropertyValue">): Palette {
  const entries = PALETTE_KEYS.map((key) => [key, style.getPropertyValue(`--board-${key}`).trim()] as const);
  return Object.fromEntries(entries) as unknown as Palette;
}
