import type { Document } from "../../core/document/index.ts";
import type { PartReading, WireReading } from "../../core/readings/index.ts";
import type { Report } from "../../core/report/index.ts";
import type { BoardMarks } from "../board/marks.ts";
import type { Consultations, Topic } from "./consultations.ts";

/** Where controls stand: control id to position. A control not named is at rest. */
export type Positions = Readonly<Record<string, string>>;

/** What the app asks of the worker. */
export type Ask =
  | { readonly type: "analyse"; readonly revision: number; readonly document: Document; readonly positions: Positions }
  /** Only controls moved: solve the document of `revision` again in this situation. */
  | { readonly type: "present"; readonly revision: number; readonly positions: Positions };

/** A question besides the running analysis, about the drawing the worker holds. */
export interface Consult<T extends Topic = Topic> {
  readonly type: "consult";
  /** Comes back with the answer. */
  readonly number: number;
  readonly topic: T;
  readonly asks: Consultations[T]["asks"];
  readonly positions: Positions;
}

/** The situation the controls are in now, solved. Volts and amps are `null` when nothing settles. */
export interface Present {
  readonly positions: Positions;
  readonly settled: boolean;
  readonly residualA: number | null;
  readonly terminals: Readonly<Record<string, { readonly volts: number | null }>>;
  readonly wires: Readonly<Record<string, WireReading>>;
  readonly parts: Readonly<Record<string, PartReading>>;
}

/** The answer to a `Consult`; `answer` absent: there is none, as the drawing can't be analysed. */
export interface Consulted {
  readonly type: "consulted";
  readonly number: number;
  readonly answer?: Consultations[Topic]["gives"];
}

/** What the worker tells. `revision` is that of the document it speaks of. */
export type Told =
  | { readonly type: "ready" }
  | {
      readonly type: "analysed";
      readonly revision: number;
      readonly report: Report;
      readonly present: Present;
      readonly marks: BoardMarks;
    }
  | { readonly type: "present"; readonly revision: number; readonly present: Present; readonly marks: BoardMarks }
  /** The analysis threw: a fault of the program, said plainly. */
  | { readonly type: "failed"; readonly revision: number; readonly reason: string };
