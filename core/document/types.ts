/**
 * The drawing as it is kept, edited and saved: exactly the circuit file, version 1. Values the person never gave are absent
 * here (defaults belong to the part kinds and to `systemOf`), and keys we do not know ride along untouched.
 * A document is frozen; every change goes through `applyEdits`.
 */

export type Cover = "bare" | "covered" | "cavity";
/** Grid steps, x to the right, y down. One step is 5 mm on paper. */
export type GridPoint = readonly [x: number, y: number];

export interface Sheet {
  readonly title?: string;
  readonly vehicle?: string;
  readonly drawnBy?: string;
  readonly revision?: string;
  readonly date?: string;
  readonly notes?: string;
}

export interface SystemSettings {
  readonly nominalV?: 12 | 24;
  readonly ambientC?: number;
  readonly conductorC?: number;
  readonly cautionDropPercent?: number;
  readonly faultDropPercent?: number;
  readonly fuseLoadPercent?: number;
  readonly capacityTable?: "vehicle" | "insulation";
  readonly alternatorA?: number;
  readonly baseLoadA?: number;
  readonly sizes?: "awg" | "mm2";
}

export interface Part {
  readonly id: string;
  readonly kind: string;
  readonly label?: string;
  readonly at?: GridPoint;
  /** Quarter turns clockwise in degrees. */
  readonly turn?: 0 | 90 | 180 | 270;
  readonly flip?: boolean;
  /** The kind's settings as given; read them through `settingsOf` in `parts`. */
  readonly props?: Readonly<Record<string, unknown>>;
  readonly covers?: Readonly<Record<string, Cover>>;
  /** What Size it must leave alone: "rating". */
  readonly fixed?: readonly string[];
}

export interface WireEnd {
  readonly terminal?: string;
  readonly stud?: string;
  readonly barrel?: string;
}

export interface Wire {
  readonly id: string;
  /** Terminal addresses, "part.terminal". */
  readonly from: string;
  readonly to: string;
  readonly size?: string;
  readonly metres?: number;
  readonly colour?: string;
  readonly insulationC?: number;
  readonly ambientC?: number;
  readonly bundle?: number;
  readonly sheathed?: boolean;
  readonly label?: string;
  readonly via?: readonly GridPoint[];
  readonly main?: "starter" | "alternator" | "winch";
  readonly measured?: boolean;
  /** What Size it must leave alone: "size". */
  readonly fixed?: readonly string[];
  readonly ends?: { readonly from?: WireEnd; readonly to?: WireEnd };
}

export interface Situation {
  readonly id: string;
  readonly name?: string;
  readonly set?: Readonly<Record<string, string>>;
}

/** Words that stand on the sheet; they say nothing to the analysis. */
export interface Note {
  /** Unique over parts, wires and notes. */
  readonly id: string;
  /** Left end of the first line. */
  readonly at: GridPoint;
  readonly text: string;
}

/** A reading taken with a meter on the finished job, in one situation. */
export interface TakenReading {
  /** A situation's id, or "dead": battery off, fuses out. */
  readonly situation: string;
  readonly meter: "V" | "A" | "ohm";
  /** Terminal address of the red lead; of amps the device or wire the clamp goes round. */
  readonly red: string;
  /** Terminal address of the black lead; absent: battery negative, or none. */
  readonly black?: string;
  /** In volts, amps or ohms. */
  readonly value: number;
  /** "2026-01-31" */
  readonly date?: string;
}

/** The drawing as it stood when it was built: what later changes are told from. */
export interface BuiltRevision {
  readonly revision: string;
  readonly date?: string;
  /** The circuit file of then, without its own readings and revisions; foreign until read like any file. */
  readonly circuit: Readonly<Record<string, unknown>>;
}

/** What happened to the finished job; none of it changes how the circuit works. */
export interface JobRecords {
  readonly readings?: readonly TakenReading[];
  /** Oldest first. */
  readonly revisions?: readonly BuiltRevision[];
}

export interface Document extends JobRecords {
  readonly format: "groundstrap";
  readonly version: 1;
  readonly sheet?: Sheet;
  readonly system?: SystemSettings;
  readonly parts: readonly Part[];
  readonly wires: readonly Wire[];
  readonly situations?: readonly Situation[];
  readonly notes?: readonly Note[];
}
