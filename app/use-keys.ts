import { useEffect } from "react";
import { useApp } from "./app-context.tsx";
import { whyNot } from "./commands/command.ts";
import { commandsFor } from "./commands/index.ts";
import { commandFor } from "./commands/keys.ts";

/** Places where keys mean what they always mean there. */
const OWN_KEYS = "input, select, textarea, [contenteditable], [data-own-keys], dialog";

/** Keys for which the browser's own event (with the clipboard in it) is waited for. */
const CLIPBOARD: ReadonlySet<string> = new Set(["copy", "cut", "paste"]);

/** Every command's keys, anywhere but in fields and dialogs. */
export function useKeys(): void {
  const { editor, runner } = useApp();
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.isComposing) return;
      const inField = event.target instanceof Element && event.target.closest(OWN_KEYS) !== null;
      const isPlain = !event.ctrlKey && !event.metaKey && !event.altKey;
      if (inField && (isPlain || !/^[skop]$/i.test(event.key))) return;
      if (isPlain && !editor.state.preferences.singleKeys && event.key.length === 1) return;
      const command = commandFor(commandsFor(editor.state), event);
      if (command === undefined || CLIPBOARD.has(command.id)) return;
      // A greyed command leaves the key to the page: arrows scroll, Escape closes what the browser opened.
      if (whyNot(command, editor.state) !== null && isPlain) return;
      event.preventDefault();
      runner.run(command.id);
    };
    const onClipboard = (event: ClipboardEvent) => {
      if (event.target instanceof Element && event.target.closest(OWN_KEYS) !== null) return;
      if ((getSelection()?.toString() ?? "") !== "" && event.type !== "paste") return;
      event.preventDefault();
      if (event.type === "paste") runner.pasteText(event.clipboardData?.getData("text/plain") ?? "");
      else runner.run(event.type);
    };
    document.addEventListener("keydown", onKeyDown);
    const kinds = ["copy", "cut", "paste"] as const;
    for (const kind of kinds) document.addEventListener(kind, onClipboard);
    return () => {
      document.removeEventListener("keydown", onKeyDown);
      for (const kind of kinds) document.removeEventListener(kind, onClipboard);
    };
  }, [editor, runner]);
}
