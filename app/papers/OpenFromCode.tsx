import { useId, useState } from "react";
import { useApp } from "../app-context.tsx";
import { openCode } from "./open-code.ts";

/** Where a phone's scanned text is put, to open the drawing in it. */
export function OpenFromCode() {
  const { editor, keeper } = useApp();
  const [text, setText] = useState("");
  const id = useId();
  const open = async () => {
    if (await openCode(editor, keeper, text)) editor.show(null);
  };
  return (
    <details className="open-code">
      <summary>Open from a code</summary>
      <label htmlFor={id}>Text of a scanned card, or a link that holds it</label>
      <textarea id={id} rows={3} spellCheck={false} value={text} onChange={(event) => setText(event.target.value)} />
      <button type="button" disabled={text.trim() === ""} onClick={() => void open()}>
        Open the drawing
      </button>
    </details>
  );
}
