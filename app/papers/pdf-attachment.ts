import type { jsPDF } from "jspdf";

/** What the library keeps out of its types: writing objects of one's own into the file. */
interface Writing {
  newObject(): number;
  write(text: string): void;
  readonly events: { subscribe(event: "postPutResources" | "putCatalog", write: () => void): void };
}

/** Attaches a text file to the PDF, as any reader lists under attachments. `text` is plain ASCII and stays unpacked. ISO 32000-1, 7.11.4. */
export function attachText(pdf: jsPDF, { name, media, text }: { name: string; media: string; text: string }): void {
  const writing = pdf.internal as unknown as Writing;
  let specification = 0;
  writing.events.subscribe("postPutResources", () => {
    const file = writing.newObject();
    writing.write(`<< /Type /EmbeddedFile /Subtype /${media.replace("/", "#2F")} /Length ${text.length} >>`);
    writing.write(`stream\n${text}\nendstream\nendobj`);
    specification = writing.newObject();
    writing.write(`<< /Type /Filespec /F (${name}) /UF (${name}) /EF << /F ${file} 0 R >> >>\nendobj`);
  });
  writing.events.subscribe("putCatalog", () => {
    writing.write(`/Names << /EmbeddedFiles << /Names [(${name}) ${specification} 0 R] >> >>`);
  });
}
