import { useState } from "react";
import { useApp, useDrawing, useEditor } from "../app-context.tsx";
import { addWire } from "../commands/add-commands.ts";
import { FocusedInput } from "../fields/FocusedInput.tsx";
import { partName, viewOf } from "../store/part-view.ts";
import { useWords } from "../use-words.ts";
import { Dialog } from "./Dialog.tsx";

interface End {
  readonly address: string;
  readonly partId: string;
  readonly text: string;
}

/** Draws a wire without pointing: choose the terminal it starts from, then the one it goes to. */
export function WireTo() {
  const { editor, runner } = useApp();
  const from = useEditor((state) => state.wireFrom);
  const ends = useEnds();
  const start = ends.find((end) => end.address === from);
  const choose = (end: End) => {
    if (start === undefined) return editor.set({ wireFrom: end.address });
    editor.show(null);
    runner.carryOut(addWire(editor.state, start.address, end.address));
  };
  return (
    <Dialog title={start === undefined ? "Wire from" : "Wire to"} className="wire-to">
      {start !== undefined && (
        <p>
          From {start.text}.{" "}
          <button type="button" onClick={() => editor.set({ wireFrom: null })}>
            From somewhere else
          </button>
        </p>
      )}
      <EndList key={start?.address ?? "start"} ends={ends.filter((end) => end !== start)} onChoose={choose} />
    </Dialog>
  );
}

function EndList({ ends, onChoose }: { readonly ends: readonly End[]; readonly onChoose: (end: End) => void }) {
  const selection = useEditor((state) => state.selection);
  const [sought, setSought] = useState("");
  const wanted = sought.toLowerCase().split(/\s+/).filter(Boolean);
  const found = ends
    .filter((end) => wanted.every((word) => end.text.toLowerCase().includes(word)))
    .toSorted((a, b) => Number(selection.has(b.partId)) - Number(selection.has(a.partId)));
  return (
    <>
      <FocusedInput
        type="search"
        aria-label="Find a terminal"
        placeholder="Part or terminal: K1 87, ground strip"
        value={sought}
        onChange={(event) => setSought(event.target.value)}
        onKeyDown={(event) => {
          if (event.key !== "Enter" || found[0] === undefined) return;
          // The button the focus goes back to must not be pressed by the same key.
          event.preventDefault();
          onChoose(found[0]);
        }}
      />
      <ul className="end-list">
        {found.map((end) => (
          <li key={end.address}>
            <button type="button" onClick={() => onChoose(end)}>
              {end.text}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}

function useEnds(): readonly End[] {
  const drawing = useDrawing();
  const words = useWords();
  return drawing.parts.flatMap((part) => {
    const { kind, terminals } = viewOf(part);
    return terminals.map(({ name, about }): End => {
      const address = `${part.id}.${name}`;
      const isWired = drawing.wires.some((wire) => wire.from === address || wire.to === address);
      const text = words(`${partName(part)} ${name}: ${kind.title.toLowerCase()}, ${about}${isWired ? "" : ", free"}`);
      return { address, partId: part.id, text };
    });
  });
}
