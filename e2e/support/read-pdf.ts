import { readFileSync } from "node:fs";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";

export interface ReadPdf {
  /** Per page: its box in points, and its text, µ and the like normalised. */
  readonly pages: readonly {
    readonly box: readonly number[];
    readonly text: string;
    readonly fonts: readonly string[];
  }[];
  readonly attachments: Readonly<Record<string, string>>;
}

/** A PDF as an independent reader sees it. */
export async function readPdf(path: string): Promise<ReadPdf> {
  const pdf = await getDocument({ data: new Uint8Array(readFileSync(path)), verbosity: 0 }).promise;
  const pages = [];
  for (let number = 1; number <= pdf.numPages; number++) {
    const page = await pdf.getPage(number);
    const { items, styles } = await page.getTextContent();
    const text = items.map((item) => ("str" in item ? item.str : "")).join("\n");
    pages.push({ box: page.view, text: text.normalize("NFKC"), fonts: Object.keys(styles) });
  }
  const attached = ((await pdf.getAttachments()) ?? {}) as Record<string, { content: Uint8Array }>;
  const attachments = Object.fromEntries(
    Object.entries(attached).map(([name, { content }]) => [name, new TextDecoder().decode(content)]),
  );
  return { pages, attachments };
}
