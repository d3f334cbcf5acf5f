import type { ComponentType } from "react";
import { useApp, useEditor } from "../../app-context.tsx";
import type { InstrumentId } from "../../store/editor-state.ts";
import { DrillPanel } from "./DrillPanel.tsx";
import { MeterPanel } from "./MeterPanel.tsx";
import { TouchPanel } from "./TouchPanel.tsx";

const INSTRUMENTS: Readonly<Record<InstrumentId, { readonly title: string; readonly Panel: ComponentType }>> = {
  touch: { title: "Touch test", Panel: TouchPanel },
  meter: { title: "Meter", Panel: MeterPanel },
  drill: { title: "Drill", Panel: DrillPanel },
};

/** The instrument in hand, lying on the Board; on a small screen under it. */
export function Instrument() {
  const { editor } = useApp();
  const instrument = useEditor((state) => state.instrument);
  if (instrument === null) return null;
  const { title, Panel } = INSTRUMENTS[instrument];
  return (
    <section className="instrument" aria-label={title}>
      <header className="dialog-head">
        <h2 className="sleeve">{title}</h2>
        <button
          type="button"
          className="close"
          aria-label={`Put the ${title.toLowerCase()} down`}
          onClick={() => editor.takeInstrument(null)}
        >
          <span aria-hidden="true">×</span>
        </button>
      </header>
      <div className="instrument-body">
        <Panel />
      </div>
    </section>
  );
}
