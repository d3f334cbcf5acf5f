import type { Document } from "../../core/document/index.ts";
import { readCircuitFile } from "../../core/file/index.ts";

/** Larger files are refused before they are read; the circuit file's own limit is 5 MB and a paper may carry some more around it. */
const MOST_BYTES = 20_000_000;

/** A circuit file, or a paper of ours, SVG or PDF, with the circuit in it. */
export async function readDrawing(file: File): Promise<{ readonly document: Document } | { readonly error: string }> {
  if (file.size > MOST_BYTES)
    return { error: `"${file.name}" has ${Math.round(file.size / 1e6)} MB; the most is 20 MB.` };
  const bytes = new Uint8Array(await file.arrayBuffer());
  const start = new TextDecoder().decode(bytes.subarray(0, 200)).trimStart();
  const isPaper = start.startsWith("<") || start.startsWith("%PDF");
  const read = isPaper ? await fromPaper(bytes, start.startsWith("<")) : readCircuitFile(bytes);
  return "error" in read ? { error: `"${file.name}" can't be opened: ${read.error}` } : read;
}

async function fromPaper(bytes: Uint8Array, isSvg: boolean) {
  const { circuitInPdf, circuitInSvg } = await import("../../core/papers/index.ts");
  const text = isSvg ? circuitInSvg(new TextDecoder().decode(bytes)) : circuitInPdf(bytes);
  return text === null ? { error: "it carries no circuit; wanted one saved from Papers" } : readCircuitFile(text);
}

/** Lets the person pick a file; `null` when they think better of it. */
export function pickFile(): Promise<File | null> {
  return new Promise((resolve) => {
    const input = document.createElement("input");
    input.type = "file";
    input.accept = ".json,.svg,.pdf,application/json,image/svg+xml,application/pdf";
    input.onchange = () => resolve(input.files?.[0] ?? null);
    input.oncancel = () => resolve(null);
    input.click();
  });
}

interface SavedAs {
  readonly name: string;
  readonly media: string;
  readonly text: string | Uint8Array<ArrayBuffer>;
}

type SavePicker = (options: {
  suggestedName: string;
  types: { description: string; accept: Record<string, string[]> }[];
}) => Promise<FileSystemFileHandle>;

/** Where each drawing was last saved to, so that saving again asks nothing. */
const handles = new Map<string, FileSystemFileHandle>();

/**
 * Saves to a file the person chose, or as a download where the browser has no other way. `remember`: saving again under this key
 * writes to the same file. False when they think better of it.
 */
export async function saveFile(file: SavedAs, remember?: string): Promise<boolean> {
  const showSaveFilePicker = (window as { showSaveFilePicker?: SavePicker }).showSaveFilePicker;
  if (showSaveFilePicker === undefined) return download(file);
  try {
    const known = remember === undefined ? undefined : handles.get(remember);
    const extension = file.name.slice(file.name.lastIndexOf("."));
    const types = [{ description: "Drawing", accept: { [file.media]: [extension] } }];
    const handle = known ?? (await showSaveFilePicker.call(window, { suggestedName: file.name, types }));
    const writing = await handle.createWritable();
    await writing.write(file.text);
    await writing.close();
    if (remember !== undefined) handles.set(remember, handle);
    return true;
  } catch (error) {
    if (error instanceof DOMException && error.name === "AbortError") return false;
    return download(file);
  }
}

function download({ name, media, text }: SavedAs): boolean {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type: media }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
  return true;
}

/** A title as a file name: letters, digits and dashes. */
export function fileName(title: string, extension: string): string {
  const plain = title
    .normalize("NFKD")
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-+|-+$/g, "")
    .toLowerCase();
  return `${plain || "drawing"}.${extension}`;
}
