import type { Document } from "../document/index.ts";
import type { Netlist } from "../netlist/index.ts";
import type { Report } from "../report/index.ts";

/** What a paper is made from: the drawing, its net and the report on it. */
export interface PaperSource {
  readonly document: Document;
  readonly netlist: Netlist;
  readonly report: Report;
}

export interface PaperOptions {
  readonly size: "A5" | "A4" | "Letter" | "Half-letter";
  readonly landscape: boolean;
  /** Word for the vehicle's metal and its connections. */
  readonly words: "ground" | "earth";
}

/** One paper: `make` gives the whole text of the file. */
export interface Paper {
  /** As named on the command line: "drawing". */
  readonly kind: string;
  readonly title: string;
  readonly about: string;
  readonly media: "image/svg+xml" | "text/csv" | "text/plain" | "text/html";
  readonly extension: "svg" | "csv" | "txt" | "html";
  make(source: PaperSource, options: PaperOptions): string;
}
