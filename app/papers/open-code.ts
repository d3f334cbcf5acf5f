import type { Keeper } from "../keeping/keeper.ts";
import type { Editor } from "../store/editor.ts";

/** Tells a payload apart before the papers are fetched; `core/papers` reads it. */
const MARK = /GS1:/;
const FIELDS = "input, textarea, select, [contenteditable]";

/** Opens the drawing a scanned code or a link carries, as a new one. A bad one is refused with the reason, and what is open stays. */
export async function openCode(editor: Editor, keeper: Keeper, text: string): Promise<boolean> {
  const { circuitInPayload } = await import("../../core/papers/index.ts");
  const read = circuitInPayload(text);
  if ("error" in read) {
    editor.notify({ about: "open", tone: "trouble", text: `The code can't be opened: ${read.error}` });
    return false;
  }
  await keeper.openNew(read.document, { keepNow: true });
  editor.dismiss("open");
  editor.say("Opened the drawing of the code");
  return true;
}

/** Opens codes that come with the page's address, now or later, and those pasted anywhere but into a field. */
export function heedCodes(editor: Editor, keeper: Keeper): void {
  const heedAddress = () => {
    const text = readable(location.hash);
    if (!MARK.test(text)) return;
    history.replaceState(null, "", location.pathname + location.search);
    void openCode(editor, keeper, text);
  };
  addEventListener("hashchange", heedAddress);
  heedAddress();
  const onPaste = (event: ClipboardEvent) => {
    const text = event.clipboardData?.getData("text/plain") ?? "";
    if (!MARK.test(text) || (event.target instanceof Element && event.target.closest(FIELDS) !== null)) return;
    event.preventDefault();
    event.stopPropagation();
    void openCode(editor, keeper, text);
  };
  document.addEventListener("paste", onPaste, { capture: true });
}

/** Some programs write the punctuation of a link in percent signs. */
function readable(hash: string): string {
  try {
    return decodeURIComponent(hash);
  } catch {
    return hash;
  }
}
