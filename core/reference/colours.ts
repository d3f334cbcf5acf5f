import type { ReferenceTable } from "./reference-table.ts";

interface Colour {
  readonly code: string;
  readonly name: string;
  /** How the screen shows it: our own choice, no standard says. */
  readonly rgb: `#${string}`;
}

const COLOURS: readonly Colour[] = [
  { code: "BK", name: "black", rgb: "#1c1c1e" },
  { code: "BN", name: "brown", rgb: "#7b4a21" },
  { code: "RD", name: "red", rgb: "#d3202b" },
  { code: "OG", name: "orange", rgb: "#ef7d13" },
  { code: "YE", name: "yellow", rgb: "#f2c90d" },
  { code: "GN", name: "green", rgb: "#23893f" },
  { code: "BU", name: "blue", rgb: "#2460c8" },
  { code: "VT", name: "violet", rgb: "#7a3fa8" },
  { code: "GY", name: "grey", rgb: "#82878c" },
  { code: "WH", name: "white", rgb: "#f4f4f0" },
  { code: "PK", name: "pink", rgb: "#f09db5" },
  { code: "GD", name: "gold", rgb: "#b8963c" },
  { code: "TQ", name: "turquoise", rgb: "#21a5a3" },
  { code: "SR", name: "silver", rgb: "#bcc0c6" },
];

/** The colours a wire or its tracer may have, in the order of the standard. */
export const wireColours: readonly Colour[] = COLOURS;

export interface WireColour {
  readonly base: Colour;
  /** The stripe along it; `null`: none. */
  readonly tracer: Colour | null;
}

/**
 * Reads IEC 60757 letters: "RD" is red, "RDBU" red with a blue tracer. Capitals or not; "RD/BU" and "RD-BU" are taken too.
 * No answer: `null` for letters that are no colour of the standard.
 */
export function parseWireColour(letters: string): WireColour | null {
  const match = /^([A-Z]{2})[\s/-]*([A-Z]{2})?$/.exec(letters.trim().toUpperCase());
  const base = colourOf(match?.[1]);
  const tracer = colourOf(match?.[2]);
  if (!base || (match?.[2] !== undefined && !tracer)) return null;
  return { base, tracer };
}

/** The colour in words: "red with blue tracer"; the letters themselves when they are no colour of the standard. */
export function wireColourName(letters: string): string {
  const colour = parseWireColour(letters);
  if (!colour) return letters;
  return colour.tracer ? `${colour.base.name} with ${colour.tracer.name} tracer` : colour.base.name;
}

export const coloursTable: ReferenceTable = {
  id: "wire-colours",
  title: "Colour letters",
  unit: "",
  source: "IEC 60757 Table 1, as printed in GOST 28763-90",
  edition: "1983 table; combination rule of the 2021 edition",
  range:
    "one or two colours; two are base and tracer (the vehicle habit; the standard itself lists them in table order)",
  rows: COLOURS.map(({ code, name }) => ({ of: code, value: name })),
};

function colourOf(code: string | undefined): Colour | null {
  return COLOURS.find((colour) => colour.code === code) ?? null;
}
