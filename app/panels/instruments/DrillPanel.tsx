import { useState } from "react";
import type { Drill, DrillSituation, Fault } from "../../../core/drill/index.ts";
import type { Document } from "../../../core/document/index.ts";
import { formatNumber, formatQuantity } from "../../../core/units/index.ts";
import { useApp, useDrawing } from "../../app-context.tsx";
import { placeName } from "../../store/part-view.ts";
import { useConsultation } from "../../use-consultation.ts";
import { useWords } from "../../use-words.ts";

const keyOf = (fault: Fault) => `${fault.mode} ${fault.at}`;

/** Pick a fault and see what happens, and which reading would find it. The drawing itself stays sound. */
export function DrillPanel() {
  const { editor } = useApp();
  const words = useWords();
  const [chosen, setChosen] = useState("");
  const faults = useConsultation("faults", "", {}) ?? [];
  const fault = faults.find((one) => keyOf(one) === chosen);
  const drill = useConsultation("drill", chosen, fault === undefined ? null : { fault });
  const choose = (key: string) => {
    setChosen(key);
    const at = faults.find((one) => keyOf(one) === key)?.at;
    editor.set(at === undefined ? { spotlight: [] } : { spotlight: [at], reveal: { places: [at] } });
  };
  return (
    <>
      <select
        aria-label="Fault"
        className="fault-choice"
        value={fault === undefined ? "" : chosen}
        onChange={(event) => choose(event.target.value)}
      >
        <option value="">choose a fault</option>
        {faults.map((one) => (
          <option key={keyOf(one)} value={keyOf(one)}>
            {words(one.title)}
          </option>
        ))}
      </select>
      {fault !== undefined && drill === undefined && <p className="quiet">Playing it…</p>}
      {drill && <DrillAnswer drill={drill} />}
    </>
  );
}

function DrillAnswer({ drill }: { readonly drill: Drill }) {
  const drawing = useDrawing();
  const { editor } = useApp();
  const { reading } = drill;
  return (
    <div aria-live="polite" className="drill-answer">
      {drill.situations.map((situation) => (
        <section key={situation.id}>
          <h4>{situation.name}</h4>
          <ul>
            {happenings(drawing, situation).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </section>
      ))}
      {reading === null ? (
        <p>No reading against battery negative shows this fault.</p>
      ) : (
        <section>
          <h4>The reading that finds it</h4>
          <p>
            {situationName(drill, reading.situation)}: black on battery negative, red on{" "}
            <button
              type="button"
              className="place-link"
              onClick={() => editor.set({ spotlight: [reading.terminal], reveal: { places: [reading.terminal] } })}
            >
              {placeName(drawing, reading.terminal)}
            </button>
            : {voltWords(reading.volts)} instead of {voltWords(reading.soundVolts)}.
          </p>
          {reading.sameAs.length > 0 && (
            <p className="quiet">The same there: {reading.sameAs.map((one) => one.title).join("; ")}.</p>
          )}
        </section>
      )}
    </div>
  );
}

function situationName(drill: Drill, id: string): string {
  return drill.situations.find((situation) => situation.id === id)?.name ?? id;
}

function voltWords(volts: number | null): string {
  return volts === null ? "nothing steady" : formatQuantity(volts, "V");
}

/** What a person would notice, in the order they would notice it. */
function happenings(drawing: Document, situation: DrillSituation): string[] {
  if (!situation.settled) return ["A relay chatters."];
  const names = (ids: readonly string[]) => ids.map((id) => placeName(drawing, id)).join(", ");
  const lines: string[] = [];
  if (situation.faultA !== null && situation.faultA > 0)
    lines.push(`${formatQuantity(situation.faultA, "A")} flow into the frame.`);
  if (situation.stop !== null) {
    const { at, withinS } = situation.stop;
    const time = withinS === null ? "" : withinS === 0 ? " at once" : ` within ${formatNumber(withinS)} s`;
    lines.push(`${at.toUpperCase()} opens${time}.`);
  } else if (situation.faultA !== null && situation.faultA > 0) lines.push("Nothing stops it.");
  for (const { part, wasOn, isOn, volts } of situation.changes) {
    const at = volts === null ? "" : `, ${formatQuantity(volts, "V")} across it`;
    lines.push(`${placeName(drawing, part)} ${isOn === wasOn ? "changes" : isOn ? "comes on" : "goes off"}${at}.`);
  }
  if (situation.glows.length > 0) lines.push(`Glows: ${names(situation.glows)}.`);
  if (situation.backfed.length > 0) lines.push(`Driven backwards: ${names(situation.backfed)}.`);
  return lines.length === 0 ? ["Nothing a person would notice."] : lines;
}
