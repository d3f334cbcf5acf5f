import { useId, useState } from "react";
import type { TakenReading } from "../../core/document/index.ts";
import { passes, type MeterPoint } from "../../core/papers/index.ts";
import { formatNumber, parseNumber } from "../../core/units/index.ts";
import { useApp } from "../app-context.tsx";
import { takenAt, withReading, type ReadingRow } from "./reading-rows.ts";
import { today } from "./today.ts";
import { WhatIsToBlame } from "./WhatIsToBlame.tsx";

interface Props {
  readonly row: ReadingRow;
  readonly readings: readonly TakenReading[];
}

/** One reading: where the leads go, what it should be, and the field for what it is. */
export function ReadingStep({ row, readings }: Props) {
  return (
    <>
      <p className="readings-where">
        <strong>
          {row.number} {row.step}
        </strong>
        <br />
        {row.set}
      </p>
      <dl className="readings-leads">
        <Term name="Red lead" value={row.red} />
        <Term name="Black lead" value={row.black} />
        <Term name="Set the meter to" value={row.meter} />
        <Term name="Expected" value={row.expected} />
        <Term name="Passes" value={row.pass} />
      </dl>
      {row.point ? (
        <Entry point={row.point} readings={readings} look={row.look} />
      ) : (
        <p className="quiet">Judge this one by eye and hand. If it does not pass, look at: {row.look}.</p>
      )}
    </>
  );
}

function Term({ name, value }: { readonly name: string; readonly value: string }) {
  return value === "" ? null : (
    <div>
      <dt>{name}</dt>
      <dd>{value}</dd>
    </div>
  );
}

interface EntryProps {
  readonly point: MeterPoint;
  readonly readings: readonly TakenReading[];
  readonly look: string;
}

/** A meter that shows no path: kept as so many ohms. */
const OPEN_OHM = 1e7;

function Entry({ point, readings, look }: EntryProps) {
  const { editor } = useApp();
  const id = useId();
  const taken = takenAt(point, readings);
  const [text, setText] = useState(taken === undefined ? "" : shown(point.meter, taken.value));
  const value = valueOf(point.meter, text);
  const unit = point.meter === "ohm" ? "Ω" : point.meter;
  const keep = () => {
    if (value === null || value === taken?.value) return;
    const change = { readings: withReading(readings, point, value, today()) };
    editor.dispatch({ label: "Take a reading", edits: [{ op: "set-records", change }] });
  };
  const isRight = value === null ? null : passes(point, value);
  return (
    <>
      <div className="readings-entry">
        <label htmlFor={id}>Reading</label>
        <input
          id={id}
          data-first-focus
          inputMode="decimal"
          autoComplete="off"
          enterKeyHint="done"
          value={text}
          aria-invalid={text.trim() !== "" && value === null}
          onChange={(event) => setText(event.target.value)}
          onBlur={keep}
          onKeyDown={(event) => event.key === "Enter" && keep()}
        />
        <span aria-hidden="true">{unit}</span>
      </div>
      <output className="readings-verdict" data-right={isRight ?? undefined}>
        {isRight === true && "✓ Passes"}
        {isRight === false && "✗ Not right: stop, and find out why"}
        {text.trim() !== "" && value === null && `Wanted a number in ${unit}${point.meter === "ohm" ? ", or OL" : ""}`}
      </output>
      {isRight === false && <p>Look at: {look}.</p>}
      {isRight === false && taken?.value === value && <WhatIsToBlame wrong={taken} readings={readings} />}
    </>
  );
}

function valueOf(meter: MeterPoint["meter"], text: string): number | null {
  if (meter === "ohm" && /^(ol|open)$/i.test(text.trim())) return OPEN_OHM;
  const typed = parseNumber(text);
  return typed.ok && Math.abs(typed.value) <= OPEN_OHM ? typed.value : null;
}

function shown(meter: MeterPoint["meter"], value: number): string {
  return meter === "ohm" && value >= OPEN_OHM ? "OL" : formatNumber(value, 6);
}
