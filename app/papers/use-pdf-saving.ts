import { useEffect, useRef, useState } from "react";
import { paperSizeMm, type PaperOptions } from "../../core/papers/index.ts";
import { useApp, useDrawing } from "../app-context.tsx";
import { titleOf } from "../keeping/drawing-shelf.ts";
import { fileName, saveFile } from "../keeping/files.ts";
import type { PdfPaper } from "./pdf.ts";

export interface PdfProgress {
  /** The paper being made. */
  readonly words: string;
  readonly done: number;
  readonly of: number;
}

/** Makes papers into one PDF file and saves it; one at a time. `progress` is `null` while nothing is being made. */
export function usePdfSaving(options: PaperOptions) {
  const { editor } = useApp();
  const drawing = useDrawing();
  const [progress, setProgress] = useState<PdfProgress | null>(null);
  const calling = useRef<AbortController | null>(null);
  useEffect(() => () => calling.current?.abort(), []);

  const make = async (title: string, papers: Iterable<PdfPaper> | AsyncIterable<PdfPaper>, signal: AbortSignal) => {
    const { makePdf } = await import("./pdf.ts");
    const [widthMm, heightMm] = paperSizeMm(options);
    const whole = `${titleOf(drawing)}: ${title}`;
    const order = { title: whole, document: drawing, widthMm, heightMm, madeAt: new Date(), papers };
    const pdf = await makePdf(order, signal);
    if (pdf === null) return editor.say("The PDF was called off");
    const name = fileName(`${titleOf(drawing)} ${title}`, "pdf");
    if (!(await saveFile({ name, media: "application/pdf", text: pdf.bytes }))) return;
    editor.say(`${title} saved as ${name}; the circuit is in it`);
    if (pdf.missing !== "") editor.notify({ about: "pdf", tone: "trouble", text: missingWords(pdf.missing) });
  };
  const save = async (title: string, papers: Iterable<PdfPaper> | AsyncIterable<PdfPaper>) => {
    const call = new AbortController();
    calling.current = call;
    setProgress({ words: title, done: 0, of: 1 });
    try {
      await make(title, papers, call.signal);
    } catch {
      editor.notify({ about: "pdf", tone: "trouble", text: "The PDF could not be made. Print to a PDF instead." });
    } finally {
      setProgress(null);
    }
  };
  return { progress, setProgress, save, cancel: () => calling.current?.abort() };
}

function missingWords(characters: string): string {
  return `The PDF's typeface lacks ${Array.from(characters).slice(0, 12).join(" ")}: a box stands in their place. Printing has them.`;
}
