import type { Note } from "../../../core/document/index.ts";
import { useApp, useDrawing } from "../../app-context.tsx";
import { TextField } from "../../fields/TextField.tsx";
import { CardButtons } from "./CardButtons.tsx";

/** A note's words; with none left it is taken off the drawing. */
export function NoteCard({ note }: { readonly note: Note }) {
  const { editor } = useApp();
  const { notes = [] } = useDrawing();
  const rewrite = (text: string): null => {
    const name = `note ${note.id.toUpperCase()}`;
    editor.dispatch({
      label: text === "" ? `Delete ${name}` : `Rewrite ${name}`,
      edits: [
        {
          op: "set-notes",
          notes: notes.flatMap((one) => (one.id !== note.id ? [one] : text === "" ? [] : [{ ...one, text }])),
        },
      ],
    });
    return null;
  };
  return (
    <>
      <h3 className="card-title">Note {note.id.toUpperCase()}</h3>
      <TextField
        label="What it says"
        lines={4}
        most={1000}
        value={note.text}
        help="Stands on the drawing and on its papers. The analysis takes no notice of it."
        onCommit={rewrite}
      />
      <CardButtons commands={["delete"]} />
    </>
  );
}
