import { useMemo, useState } from "react";
import type { BuiltRevision, Document } from "../../core/document/index.ts";
import { writeCircuitFile } from "../../core/file/index.ts";
import { compare, drawingOfRevision, withBuilt } from "../../core/papers/index.ts";
import { useApp, useDrawing } from "../app-context.tsx";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { Dialog } from "../panels/Dialog.tsx";
import "./papers.css";
import { today } from "./today.ts";

const NOW = "now";
/** Short of the 5 MB a circuit file may have. */
const MOST_CHARACTERS = 4_500_000;

/** What was built when, and what differs between any two of them or the drawing as it stands. */
export function Revisions() {
  const drawing = useDrawing();
  const revisions = drawing.revisions ?? [];
  const [before, setBefore] = useState(String(revisions.length - 1));
  const [after, setAfter] = useState(NOW);
  const options = [
    ...revisions.map((revision, at) => ({ value: String(at), label: nameOf(revision) })),
    { value: NOW, label: "The drawing as it stands" },
  ];
  const hasBoth = revisions.length > 0;
  return (
    <Dialog title="Revisions" className="revisions">
      <MarkAsBuilt onMarked={(count) => setBefore(String(count - 1))} />
      {hasBoth && (
        <>
          <div className="revisions-choice">
            <ChoiceField label="Compare" value={before} options={options} onCommit={setBefore} />
            <ChoiceField label="with" value={after} options={options} onCommit={setAfter} />
          </div>
          <SideBySide
            before={drawingAt(before, drawing)}
            after={drawingAt(after, drawing)}
            names={[before, after].map((value) => options.find((one) => one.value === value)?.label ?? "")}
          />
        </>
      )}
    </Dialog>
  );
}

interface MarkProps {
  readonly onMarked: (count: number) => void;
}

/** Records the drawing as it stands as built; under the revision its sheet says. */
function MarkAsBuilt({ onMarked }: MarkProps) {
  const { editor } = useApp();
  const drawing = useDrawing();
  const revision = drawing.sheet?.revision ?? "";
  const mark = () => {
    const revisions = withBuilt(drawing, today());
    if (writeCircuitFile({ ...drawing, revisions }).length > MOST_CHARACTERS) {
      const text = "The file would get too big with one more revision in it. Save a copy, then take old ones out.";
      return editor.notify({ about: "revisions", tone: "trouble", text });
    }
    editor.dispatch({
      label: `Mark revision ${revision} as built`,
      edits: [{ op: "set-records", change: { revisions } }],
    });
    onMarked(revisions.length);
  };
  const forgetOldest = () => {
    const revisions = drawing.revisions?.slice(1);
    editor.dispatch({ label: "Take out the oldest revision", edits: [{ op: "set-records", change: { revisions } }] });
    onMarked(revisions?.length ?? 0);
  };
  return (
    <div className="row-buttons">
      <button type="button" className="primary" disabled={revision === ""} onClick={mark}>
        {revision === "" ? "Mark as built" : `Mark revision ${revision} as built`}
      </button>
      {(drawing.revisions?.length ?? 0) > 1 && (
        <button type="button" onClick={forgetOldest}>
          Take out the oldest
        </button>
      )}
      <p className="quiet">
        {revision === ""
          ? "Give the sheet a revision first: on the Card, with nothing selected."
          : "Keeps the drawing as it is now inside the file. The change log lists what is changed after it."}
      </p>
    </div>
  );
}

interface SideProps {
  readonly before: Document | null;
  readonly after: Document | null;
  readonly names: readonly string[];
}

function SideBySide({ before, after, names }: SideProps) {
  const shown = useMemo(() => (before && after ? compare(before, after) : null), [before, after]);
  if (shown === null) return <p>The record of one of them can't be read.</p>;
  const pictures = [shown.before, shown.after];
  return (
    <>
      <div className="revisions-sides">
        {pictures.map((picture, at) => (
          <figure key={at === 0 ? "before" : "after"}>
            <img src={`data:image/svg+xml,${encodeURIComponent(picture)}`} alt={`Drawing: ${names[at]}`} />
            <figcaption>{names[at]}</figcaption>
          </figure>
        ))}
      </div>
      <p className="quiet">Framed parts and thick wires differ.</p>
      <ul aria-label="What differs">
        {shown.rows.length === 0 && <li>Nothing that matters on the vehicle.</li>}
        {shown.rows.map(({ what, id, how }) => (
          <li key={`${what} ${id} ${how}`}>
            {id.toUpperCase()} {what}: {how}
          </li>
        ))}
      </ul>
    </>
  );
}

function nameOf({ revision, date }: BuiltRevision): string {
  return `Revision ${revision === "" ? "not stated" : revision}${date === undefined ? "" : `, built ${date}`}`;
}

/** `value`: number of a revision on record, or `NOW`. */
function drawingAt(value: string, drawing: Document): Document | null {
  if (value === NOW) return drawing;
  const revision = drawing.revisions?.[Number(value)];
  const read = revision && drawingOfRevision(revision);
  return read?.ok ? read.document : null;
}
