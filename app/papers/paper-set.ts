import { papers, type PaperOptions, type PaperSource } from "../../core/papers/index.ts";
import type { PdfPaper } from "./pdf.ts";

/** Every paper of a drawing, one after the other; before each the page gets to breathe, and `onPaper` hears which comes. */
export async function* everyPaper(
  source: PaperSource,
  options: PaperOptions,
  onPaper: (title: string, at: number, of: number) => void,
): AsyncGenerator<PdfPaper> {
  for (const [at, paper] of papers.entries()) {
    onPaper(paper.title, at, papers.length);
    await new Promise((resolve) => setTimeout(resolve));
    yield { title: paper.title, pages: paper.pages(source, options) };
  }
}
