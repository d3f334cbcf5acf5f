import { awgTable } from "./awg.ts";
import { barrelsTable } from "./barrels.ts";
import { bundleTable } from "./capacity.ts";
import { insulationCapacityTable, vehicleCapacityTable } from "./capacity-tables.ts";
import { cautionsTable } from "./cautions.ts";
import { coloursTable } from "./colours.ts";
import { copperTable } from "./copper.ts";
import { filamentTable } from "./filament.ts";
import { fuseColoursTable } from "./fuse-colours.ts";
import { fuseDistanceTable } from "./fuse-distance.ts";
import { fuseGatesTable } from "./fuse-gates.ts";
import { fuseRatingsTable } from "./fuse-ratings.ts";
import { fuseResistanceTable } from "./fuse-resistance.ts";
import { leadAcidTable } from "./lead-acid.ts";
import { iec60228Table, iso6722Table } from "./metric-conductors.ts";
import { pullOutTable } from "./pull-out.ts";
import type { ReferenceTable } from "./reference-table.ts";
import { ringStudsTable } from "./ring-studs.ts";
import { shortCircuitTable } from "./short-circuit.ts";
import { soldSizesTable } from "./sold-sizes.ts";
import { terminalMarksTable } from "./terminal-marks.ts";

/** Every published table the program leans on, for the help page and for the checks that each names its source. */
export const referenceTables: readonly ReferenceTable[] = [
  copperTable,
  awgTable,
  iso6722Table,
  iec60228Table,
  vehicleCapacityTable,
  insulationCapacityTable,
  bundleTable,
  soldSizesTable,
  shortCircuitTable,
  fuseRatingsTable,
  fuseColoursTable,
  fuseResistanceTable,
  fuseGatesTable,
  fuseDistanceTable,
  barrelsTable,
  ringStudsTable,
  pullOutTable,
  filamentTable,
  leadAcidTable,
  coloursTable,
  terminalMarksTable,
  cautionsTable,
];
