import { useMemo, useState } from "react";
import { passes } from "../../core/papers/index.ts";
import { useApp, useDrawing } from "../app-context.tsx";
import { Dialog } from "../panels/Dialog.tsx";
import "./papers.css";
import { ReadingStep } from "./ReadingStep.tsx";
import { readingRows, takenAt, type ReadingRow } from "./reading-rows.ts";
import { usePaperSource } from "./use-paper-source.ts";

/** The test sheet taken down under the vehicle: one big step at a time, a reading typed in, right or wrong at once. */
export function TakeReadings() {
  const { editor } = useApp();
  const drawing = useDrawing();
  const source = usePaperSource();
  const rows = useMemo(() => (source === null ? null : readingRows(source)), [source]);
  const [at, setAt] = useState(0);
  const readings = drawing.readings ?? [];
  const row = rows?.[at];
  return (
    <Dialog title="Take readings" className="take-readings">
      <div className="readings-step">
        {rows === null ? (
          <p className="quiet">Waiting for the analysis…</p>
        ) : row === undefined ? (
          <ReadingsDone rows={rows} onGoTo={setAt} />
        ) : (
          <ReadingStep key={row.number} row={row} readings={readings} />
        )}
      </div>
      <div className="readings-way">
        <button type="button" disabled={at === 0} onClick={() => setAt(at - 1)}>
          Back
        </button>
        <progress aria-label="Readings gone through" value={at} max={rows?.length ?? 1} />
        {row === undefined ? (
          <button type="button" className="primary" onClick={() => editor.show("papers")}>
            To the papers
          </button>
        ) : (
          <button type="button" className="primary" onClick={() => setAt(at + 1)}>
            Next
          </button>
        )}
      </div>
    </Dialog>
  );
}

interface DoneProps {
  readonly rows: readonly ReadingRow[];
  readonly onGoTo: (at: number) => void;
}

/** How it went: what was wrong, to go back to, and how much was left out. */
function ReadingsDone({ rows, onGoTo }: DoneProps) {
  const { editor } = useApp();
  const { readings = [] } = useDrawing();
  const typed = rows.flatMap(({ point, ...row }, at) =>
    point ? [{ ...row, at, point, taken: takenAt(point, readings) }] : [],
  );
  const wrong = typed.filter(({ point, taken }) => taken !== undefined && !passes(point, taken.value));
  const open = typed.filter(({ taken }) => taken === undefined);
  const forget = () =>
    editor.dispatch({ label: "Clear the readings", edits: [{ op: "set-records", change: { readings: undefined } }] });
  return (
    <>
      <p className="readings-verdict">
        {wrong.length === 0 ? `${typed.length - open.length} readings, none wrong.` : `${wrong.length} wrong.`}
        {open.length > 0 && ` ${open.length} not taken yet.`}
      </p>
      <ul className="readings-list">
        {[...wrong, ...open].map(({ at, number, red, black, taken }) => (
          <li key={number}>
            <button type="button" onClick={() => onGoTo(at)}>
              {taken === undefined ? "Not taken" : "Wrong"}: {number} {red}
              {black !== "" && `, ${black}`}
            </button>
          </li>
        ))}
      </ul>
      {readings.length > 0 && (
        <button type="button" onClick={forget}>
          Clear all readings
        </button>
      )}
    </>
  );
}
