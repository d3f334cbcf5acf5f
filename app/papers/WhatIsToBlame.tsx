import type { TakenReading } from "../../core/document/index.ts";
import { useApp } from "../app-context.tsx";
import { useConsultation } from "../use-consultation.ts";

interface Props {
  readonly wrong: TakenReading;
  readonly readings: readonly TakenReading[];
}

/** What explains a wrong reading best, with the others that were taken; worked out from the drawing. */
export function WhatIsToBlame({ wrong, readings }: Props) {
  const { editor } = useApp();
  const known = readings.length;
  const blames = useConsultation("diagnosis", JSON.stringify(readings) + JSON.stringify(wrong), { readings, wrong });
  const show = (at: readonly string[]) => {
    editor.set({ reveal: { places: at }, spotlight: at });
    editor.show(null);
  };
  if (blames === undefined) return <p className="quiet">Working out what would explain it…</p>;
  if (blames.length === 0)
    return <p>No single poor joint or fault of this drawing explains it. Check leads and meter.</p>;
  return (
    <section className="readings-blame" aria-label="What would explain it">
      <h3>What would explain it, best first</h3>
      <ol>
        {blames.map(({ text, at, explains }) => (
          <li key={text}>
            {text}. Agrees with {explains} of {known} {known === 1 ? "reading" : "readings"}.
            {at.length > 1 && " Read again between these places to tell them apart."}
            <button type="button" onClick={() => show(at)}>
              Show on the Board
            </button>
          </li>
        ))}
      </ol>
    </section>
  );
}
