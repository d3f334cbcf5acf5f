import { parseWireSize } from "../units/index.ts";
import { awgAreaMm2 } from "./awg.ts";
import type { ReferenceTable } from "./reference-table.ts";

/** Hyundai Body Builder 2015, p. 217; makers are named in the code only. */
const VEHICLE_SOURCE = "a vehicle maker's body-builder guide, p. 217: largest fuse by wire area";
const CFR_SOURCE = "33 CFR 183.425 Table 5 (US Coast Guard)";

/** Largest fuse, A, by wire; smallest wire first. */
const VEHICLE_AWG = [
  ["20 AWG", 7.5],
  ["18 AWG", 10],
  ["16 AWG", 15],
  ["14 AWG", 20],
  ["12 AWG", 25],
  ["10 AWG", 30],
  ["8 AWG", 40],
  ["6 AWG", 50],
  ["4 AWG", 80],
  ["2 AWG", 100],
  ["1/0 AWG", 125],
  ["2/0 AWG", 150],
  ["3/0 AWG", 200],
] as const;

const VEHICLE_MM2 = [
  ["0.5 mm2", 7.5],
  ["0.75 mm2", 7.5],
  ["1 mm2", 10],
  ["1.5 mm2", 15],
  ["2.5 mm2", 20],
  ["4 mm2", 25],
  ["6 mm2", 30],
  ["10 mm2", 50],
  ["16 mm2", 60],
  ["25 mm2", 80],
  ["35 mm2", 100],
  ["50 mm2", 125],
  ["70 mm2", 150],
] as const;

/** Insulation ratings, °C, of the columns of `CFR_ROWS`. */
const CFR_COLUMNS_C = [60, 75, 80, 90, 105, 125, 200];
const CFR_ROWS = [
  ["18 AWG", [10, 10, 15, 20, 20, 25, 25]],
  ["16 AWG", [15, 15, 20, 25, 25, 30, 35]],
  ["14 AWG", [20, 20, 25, 30, 35, 40, 45]],
  ["12 AWG", [25, 25, 35, 40, 45, 50, 55]],
  ["10 AWG", [40, 40, 50, 55, 60, 70, 70]],
  ["8 AWG", [55, 65, 70, 70, 80, 90, 100]],
  ["6 AWG", [80, 95, 100, 100, 120, 125, 135]],
  ["4 AWG", [105, 125, 130, 135, 160, 170, 180]],
  ["3 AWG", [120, 145, 150, 155, 180, 195, 210]],
  ["2 AWG", [140, 170, 175, 180, 210, 225, 240]],
  ["1 AWG", [165, 195, 210, 210, 245, 265, 280]],
  ["1/0 AWG", [195, 230, 245, 245, 285, 305, 325]],
  ["2/0 AWG", [225, 265, 285, 285, 330, 355, 370]],
  ["3/0 AWG", [260, 310, 330, 330, 385, 410, 430]],
  ["4/0 AWG", [300, 360, 385, 385, 445, 475, 510]],
] as const;

interface CapacityRow {
  readonly size: string;
  readonly areaMm2: number;
  /** One value, or one per insulation column. */
  readonly amps: readonly number[];
}

export interface CapacityTable {
  readonly title: string;
  /** Ambient the amps hold up to. */
  readonly ambientC: number;
  /** Lowest insulation rating of each column; one column that holds for all is 0. */
  readonly insulationC: readonly number[];
  /** Smallest wire first. */
  readonly awg: readonly CapacityRow[];
  readonly mm2: readonly CapacityRow[];
}

const cfrAwg = CFR_ROWS.map(([size, amps]) => capacityRow(size, amps));

/** The current-limit tables a drawing may choose from. */
export const capacityTables: Readonly<Record<"vehicle" | "insulation", CapacityTable>> = {
  vehicle: {
    title: "vehicle maker's 40 °C table",
    ambientC: 40,
    insulationC: [0],
    awg: VEHICLE_AWG.map(([size, amps]) => capacityRow(size, [amps])),
    mm2: VEHICLE_MM2.map(([size, amps]) => capacityRow(size, [amps])),
  },
  insulation: {
    title: "33 CFR 183.425 Table 5, by insulation rating, 30 °C",
    ambientC: 30,
    insulationC: CFR_COLUMNS_C,
    awg: cfrAwg,
    // The law lists AWG only: a metric wire counts as the largest gauge it has the copper of.
    mm2: cfrAwg,
  },
};

export const vehicleCapacityTable: ReferenceTable = {
  id: "capacity-vehicle",
  title: "Current limit of a wire, vehicle maker's table",
  unit: "A",
  source: `${VEHICLE_SOURCE}; the gauges set beside the areas are ours`,
  edition: "2015",
  range:
    "single wire, ambient up to 40 °C; sizes between take the next size down, below the smallest there is no answer",
  rows: [...VEHICLE_AWG, ...VEHICLE_MM2].map(([size, amps]) => ({ of: size, value: amps })),
};

export const insulationCapacityTable: ReferenceTable = {
  id: "capacity-insulation",
  title: "Allowable amperage of conductors by insulation rating",
  unit: "A",
  source: CFR_SOURCE,
  edition: "Code of Federal Regulations, 2001 text",
  range:
    "single copper wire in free air at 30 °C; ratings between columns take the lower column, below 60 °C there is no answer",
  rows: CFR_ROWS.flatMap(([size, amps]) =>
    amps.map((value, column) => ({ of: `${size}, insulation ${CFR_COLUMNS_C[column]} °C`, value })),
  ),
};

function capacityRow(size: string, amps: readonly number[]): CapacityRow {
  const parsed = parseWireSize(size);
  if (!parsed.ok) throw new RangeError(`capacity table: got size "${size}", wanted ${parsed.wanted}`);
  const areaMm2 = parsed.value.system === "awg" ? awgAreaMm2(parsed.value.gauge) : parsed.value.areaMm2;
  return { size, areaMm2, amps };
}
