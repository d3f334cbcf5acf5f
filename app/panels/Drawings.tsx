import { useEffect, useState } from "react";
import { EXAMPLES } from "../../core/examples/index.ts";
import { useApp, useEditor } from "../app-context.tsx";
import { FocusedInput } from "../fields/FocusedInput.tsx";
import type { DrawingEntry } from "../keeping/drawing-shelf.ts";
import { Dialog } from "./Dialog.tsx";

/** The drawings kept in this browser, the demos, and files. */
export function Drawings() {
  const { editor, runner } = useApp();
  const { kept, deleted, lookAgain } = useKept();
  const openId = useEditor((state) => state.drawingId);
  const run = (command: string) => {
    editor.show(null);
    runner.run(command);
  };
  return (
    <Dialog title="Drawings" className="drawings">
      <div className="row-buttons">
        <button type="button" className="primary" onClick={() => run("new")}>
          New drawing
        </button>
        <button type="button" onClick={() => run("open")}>
          Open a file
        </button>
        <button type="button" onClick={() => run("save")}>
          Save this one to a file
        </button>
      </div>
      <h3>Kept in this browser</h3>
      {kept?.length === 0 && <p className="quiet">None yet. A drawing is kept here from its first change on.</p>}
      <ul className="drawing-list">
        {kept?.map((entry) => (
          <DrawingRow key={entry.id} entry={entry} isOpen={entry.id === openId} onChanged={lookAgain} />
        ))}
      </ul>
      {deleted.length > 0 && <Deleted entries={deleted} onChanged={lookAgain} />}
      <h3>Demos</h3>
      <ul className="drawing-list">
        {EXAMPLES.map((example) => (
          <li key={example.name} className="drawing-row">
            <button type="button" className="drawing-open" onClick={() => run(`demo ${example.name}`)}>
              <span className="drawing-title">{example.title}</span>
              <span className="drawing-about">{example.about}</span>
            </button>
          </li>
        ))}
      </ul>
      <p className="quiet">
        What is kept here stays on this device and can be lost when the browser tidies up. A file is yours for good:
        save one now and then.
      </p>
    </Dialog>
  );
}

/** The drawings as they are kept now; looked at again after each save and on request. */
function useKept() {
  const { keeper } = useApp();
  const openId = useEditor((state) => state.drawingId);
  const save = useEditor((state) => state.save);
  const [kept, setKept] = useState<readonly DrawingEntry[] | null>(null);
  const [deleted, setDeleted] = useState<readonly DrawingEntry[]>([]);
  const [looks, setLooks] = useState(0);
  useEffect(() => {
    void keeper.list().then(setKept);
    void keeper.list({ deleted: true }).then(setDeleted);
  }, [keeper, openId, save, looks]);
  return { kept, deleted, lookAgain: () => setLooks((count) => count + 1) };
}

function Deleted({
  entries,
  onChanged,
}: {
  readonly entries: readonly DrawingEntry[];
  readonly onChanged: () => void;
}) {
  const { keeper } = useApp();
  return (
    <details>
      <summary>Deleted in the last 30 days ({entries.length})</summary>
      <ul className="drawing-list">
        {entries.map((entry) => (
          <li key={entry.id} className="drawing-row">
            <span className="drawing-title">{entry.title}</span>
            <button type="button" onClick={() => void keeper.restore(entry.id).then(onChanged)}>
              Bring back
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}

interface RowProps {
  readonly entry: DrawingEntry;
  readonly isOpen: boolean;
  readonly onChanged: () => void;
}

function DrawingRow({ entry, isOpen, onChanged }: RowProps) {
  const { editor, keeper } = useApp();
  const [name, setName] = useState<string | null>(null);
  const rename = () => {
    if (name !== null && name.trim() !== "" && name.trim() !== entry.title)
      void keeper.rename(entry.id, name.trim()).then(onChanged);
    setName(null);
  };
  const remove = async () => {
    await keeper.remove(entry.id);
    editor.notify({
      about: "deleted",
      tone: "plain",
      text: `"${entry.title}" is deleted.`,
      action: { label: "Undo", run: () => void keeper.restore(entry.id) },
    });
    onChanged();
  };
  return (
    <li className="drawing-row" data-open={isOpen || undefined}>
      {name === null ? (
        <button
          type="button"
          className="drawing-open"
          aria-current={isOpen || undefined}
          onClick={() => void keeper.openKept(entry.id).then(() => editor.show(null))}
        >
          <span className="drawing-title">{entry.title}</span>
          <span className="drawing-about">
            {entry.partCount} {entry.partCount === 1 ? "part" : "parts"}, kept{" "}
            {new Date(entry.savedAtMs).toLocaleString()}
            {fileWords(entry)}
          </span>
        </button>
      ) : (
        <FocusedInput
          aria-label={`New title of ${entry.title}`}
          value={name}
          onFocus={(event) => event.target.select()}
          onChange={(event) => setName(event.target.value)}
          onBlur={rename}
          onKeyDown={(event) => {
            if (event.key === "Enter") rename();
            if (event.key === "Escape") {
              event.stopPropagation();
              event.preventDefault();
              setName(null);
            }
          }}
        />
      )}
      <button type="button" onClick={() => setName(entry.title)}>
        Rename
      </button>
      <button type="button" onClick={() => void remove()}>
        Delete
      </button>
    </li>
  );
}

function fileWords({ fileSave, save }: DrawingEntry): string {
  if (fileSave === null) return ", in no file yet";
  return fileSave === save ? ", in a file as it is" : ", changed since it went to a file";
}
