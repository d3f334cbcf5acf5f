import { jsPDF } from "jspdf";
import { svg2pdf } from "svg2pdf.js";
import type { Document } from "../../core/document/index.ts";
import { circuitForPdf } from "../../core/papers/index.ts";
import regularUrl from "../fonts/inter-regular.ttf?url";
import { attachText } from "./pdf-attachment.ts";

/** Pages that belong together, under one bookmark. */
export interface PdfPaper {
  readonly title: string;
  /** SVG files of true size. */
  readonly pages: readonly string[];
}

export interface PdfOrder {
  readonly title: string;
  /** Goes along as an attachment, so that the drawing can be opened from the PDF. */
  readonly document: Document;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly madeAt: Date;
  readonly papers: Iterable<PdfPaper> | AsyncIterable<PdfPaper>;
}

export interface PdfFile {
  readonly bytes: Uint8Array<ArrayBuffer>;
  /** Characters the typeface lacks, each once; in their place stands a box. */
  readonly missing: string;
}

const FACE = "Inter";
const ABOUT =
  "This file carries the circuit itself: open it in Groundstrap, or take circuit.json from its attachments.";
const STAND_IN = "\u25a1";

/** A PDF with one page per page of each paper, of exactly the sheet's size. `null` when `signal` called it off. */
export async function makePdf(order: PdfOrder, signal?: AbortSignal): Promise<PdfFile | null> {
  const { widthMm, heightMm } = order;
  const sheet = [widthMm, heightMm];
  const orientation = widthMm > heightMm ? "landscape" : "portrait";
  const pdf = new jsPDF({ unit: "mm", format: sheet, orientation, compress: true, putOnlyUsedFonts: true });
  pdf.deletePage(1);
  pdf.setCreationDate(order.madeAt);
  pdf.setDocumentProperties({ title: order.title, subject: ABOUT, creator: "Groundstrap" });
  attachText(pdf, { name: "circuit.json", media: "application/json", text: circuitForPdf(order.document) });
  const isSet = await typeface(pdf);
  const missing = new Set<string>();
  for await (const { title, pages } of order.papers) {
    for (const [at, page] of pages.entries()) {
      if (signal?.aborted) return null;
      pdf.addPage(sheet, orientation);
      if (at === 0) pdf.outline.add(null, title, { pageNumber: pdf.getNumberOfPages() });
      const svg = new DOMParser().parseFromString(page, "image/svg+xml").documentElement;
      svg.querySelector("metadata")?.remove();
      for (const piece of svg.querySelectorAll("text")) standIn(piece, isSet, missing);
      await svg2pdf(svg, pdf, { width: widthMm, height: heightMm });
    }
  }
  if (signal?.aborted) return null;
  return { bytes: new Uint8Array(pdf.output("arraybuffer")), missing: [...missing].join("") };
}

/** Embeds the typeface and says which characters it can set. */
async function typeface(pdf: jsPDF): Promise<(character: string) => boolean> {
  const bytes = new Uint8Array(await (await fetch(regularUrl)).arrayBuffer());
  pdf.addFileToVFS("inter-regular.ttf", base64(bytes));
  pdf.addFont("inter-regular.ttf", FACE, "normal");
  pdf.setFont(FACE, "normal");
  const { metadata } = pdf.getFont() as unknown as { metadata: { characterToGlyph(code: number): number } };
  return (character) => character.length === 1 && metadata.characterToGlyph(character.charCodeAt(0)) > 0;
}

function standIn(piece: Element, isSet: (character: string) => boolean, missing: Set<string>): void {
  const set = Array.from(piece.textContent, (character) => {
    if (isSet(character)) return character;
    missing.add(character);
    return isSet(STAND_IN) ? STAND_IN : "?";
  });
  piece.textContent = set.join("");
}

function base64(bytes: Uint8Array): string {
  let text = "";
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text);
}
