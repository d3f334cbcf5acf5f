import type { ReferenceTable } from "./reference-table.ts";

interface RingStud {
  readonly stud: string;
  /** The nearest inch stud, as named in the trade. */
  readonly inch: string;
  readonly holeMm: number;
  readonly fromMemory?: true;
}

/** Studs a ring terminal is made for, smallest first. */
export const ringStuds: readonly RingStud[] = [
  { stud: "M3", inch: "#4", holeMm: 3.2 },
  { stud: "M3.5", inch: "#6", holeMm: 3.7, fromMemory: true },
  { stud: "M4", inch: "#8", holeMm: 4.3 },
  { stud: "M5", inch: "#10", holeMm: 5.3 },
  { stud: "M6", inch: "1/4 in", holeMm: 6.4 },
  { stud: "M8", inch: "5/16 in", holeMm: 8.4, fromMemory: true },
  { stud: "M10", inch: "3/8 in", holeMm: 10.5, fromMemory: true },
];

export const ringStudsTable: ReferenceTable = {
  id: "ring-studs",
  title: "Ring hole by stud",
  unit: "mm",
  source: "a controlgear maker's manual (M3, M4) and a terminal maker's page (M5, M6)",
  edition: "2011",
  range: "smallest hole of the ring",
  rows: ringStuds.map(({ stud, inch, holeMm, fromMemory }) => ({
    of: `${stud} (${inch})`,
    value: holeMm,
    ...(fromMemory ? { fromMemory } : {}),
  })),
};
