import type { ReferenceTable } from "./reference-table.ts";

/**
 * Farthest the first protective device may sit from its source, metres along the wire; a length equal to it is within it.
 * The law says 7 in and 40 in; the metric edition of the boat standard rounds to 0.18 m and 1.0 m, and so do we.
 */
export const fuseDistanceM = { bare: 0.18, sheathed: 1 } as const;

export const fuseDistanceTable: ReferenceTable = {
  id: "fuse-distance",
  title: "Distance from the source to its fuse",
  unit: "m",
  source: "33 CFR 183.455 (7 in; 40 in inside a sheath or enclosure all the way); ABYC E-11 quotes the same",
  edition: "Code of Federal Regulations; ABYC E-11 2004",
  range: "a boat rule: road-vehicle sources say as close as practical and give no number",
  rows: [
    { of: "bare run (7 in)", value: fuseDistanceM.bare },
    { of: "sheathed all the way (40 in)", value: fuseDistanceM.sheathed },
  ],
};
