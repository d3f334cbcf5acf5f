import type { ReferenceRow, ReferenceTable } from "./reference-table.ts";

interface FuseColour {
  readonly ratingA: number;
  readonly colour: string;
  readonly fromMemory?: true;
}

/** Miniature and medium blades share their colours. 35 A is left out: three sources name three colours. */
const BLADE: readonly FuseColour[] = [
  { ratingA: 1, colour: "black" },
  { ratingA: 2, colour: "grey" },
  { ratingA: 3, colour: "violet" },
  { ratingA: 4, colour: "pink" },
  { ratingA: 5, colour: "tan" },
  { ratingA: 7.5, colour: "brown" },
  { ratingA: 10, colour: "red" },
  { ratingA: 15, colour: "blue" },
  { ratingA: 20, colour: "yellow" },
  { ratingA: 25, colour: "clear" },
  { ratingA: 30, colour: "green" },
  { ratingA: 40, colour: "orange" },
];

const MAXI_BLADE: readonly FuseColour[] = [
  { ratingA: 20, colour: "yellow" },
  { ratingA: 25, colour: "grey", fromMemory: true },
  { ratingA: 30, colour: "green" },
  { ratingA: 35, colour: "brown", fromMemory: true },
  { ratingA: 40, colour: "orange" },
  { ratingA: 50, colour: "red" },
  { ratingA: 60, colour: "blue" },
  { ratingA: 70, colour: "tan" },
  { ratingA: 80, colour: "clear" },
  { ratingA: 100, colour: "violet" },
];

const BY_BODY = new Map([
  ["blade", BLADE],
  ["mini-blade", BLADE],
  ["maxi-blade", MAXI_BLADE],
]);

/** Colour of the plastic of a fuse, in words, to find it in the box; `null` where none is standard. Never choose by colour alone. */
export function fuseColour(body: string, ratingA: number): string | null {
  return BY_BODY.get(body)?.find((row) => row.ratingA === ratingA)?.colour ?? null;
}

export const fuseColoursTable: ReferenceTable = {
  id: "fuse-colours",
  title: "Colours of blade fuses",
  unit: "",
  source: "ISO 8820-3, SAE J1284, J2077 (blade) and J1888 (maxi), through a vehicle maker's tables and three lists",
  edition: "2015",
  range: "plastic body; the same colour means another rating in another body; 35 A blade is disputed and left out",
  rows: [...BLADE.map((row) => colourRow("blade", row)), ...MAXI_BLADE.map((row) => colourRow("maxi blade", row))],
};

function colourRow(body: string, { ratingA, colour, fromMemory }: FuseColour): ReferenceRow {
  return { of: `${body} ${ratingA} A`, value: colour, ...(fromMemory ? { fromMemory } : {}) };
}
