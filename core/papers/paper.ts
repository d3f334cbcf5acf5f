import type { Document } from "../document/index.ts";
import type { Netlist } from "../netlist/index.ts";
import type { Report } from "../report/index.ts";

/** What a paper is made from: the drawing, its net and the report on it. */
export interface PaperSource {
  readonly document: Document;
  readonly netlist: Netlist;
  readonly report: Report;
  /** The revision before, for papers that say what changed; absent: none was given. */
  readonly previous?: Document;
}

export interface PaperOptions {
  readonly size: "A5" | "A4" | "Letter" | "Half-letter";
  readonly landscape: boolean;
  /** Word for the vehicle's metal and its connections. */
  readonly words: "ground" | "earth";
}

/** One paper. A pure function of its source: the same drawing gives the same bytes. */
export interface Paper {
  /** As named on the command line: "drawing". */
  readonly kind: string;
  readonly title: string;
  readonly about: string;
  /** What `make` gives. */
  readonly media: "image/svg+xml" | "text/csv" | "text/plain";
  readonly extension: "svg" | "csv" | "txt";
  /** The whole text of the file people ask for; of a paper of several pages, its first. */
  make(source: PaperSource, options: PaperOptions): string;
  /** Every page to print, each an SVG file of true size; at least one. */
  pages(source: PaperSource, options: PaperOptions): readonly string[];
}

/** A file of a paper; `suffix` goes between its name and its extension: "" for the first, "-2" for the second page. */
export interface PaperFile {
  readonly suffix: string;
  readonly text: string;
}

/**
 * The files a paper comes to when written with this extension ("svg", with or without a dot). With "svg", every page; else,
 * the one file `make` gives.
 */
export function paperFiles(
  paper: Paper,
  source: PaperSource,
  options: PaperOptions,
  extension: string,
): readonly PaperFile[] {
  if (extension.replace(".", "").toLowerCase() !== "svg") return [{ suffix: "", text: paper.make(source, options) }];
  return paper.pages(source, options).map((text, at) => ({ suffix: at === 0 ? "" : `-${at + 1}`, text }));
}
