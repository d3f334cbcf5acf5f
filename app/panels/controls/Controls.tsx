import { useApp, useDrawing, useEditor } from "../../app-context.tsx";
import { controlsOf } from "../../store/controls-of.ts";
import { ControlTile } from "./ControlTile.tsx";
import { Situations } from "./Situations.tsx";

/** Every switch, key, vehicle signal and the engine, to operate; flick one and the Board answers. */
export function Controls() {
  const { editor } = useApp();
  const drawing = useDrawing();
  const positions = useEditor((state) => state.positions);
  const controls = controlsOf(drawing);
  return (
    <section className="controls" aria-label="Controls">
      <h2 className="sleeve">Controls</h2>
      <div className="controls-row">
        {controls.map((control) => (
          <ControlTile
            key={control.id}
            control={control}
            position={positions[control.id] ?? control.positions[0]!}
            onMove={(position) => editor.operate(control.id, position)}
          />
        ))}
        <LoadsNow />
      </div>
      <Situations />
    </section>
  );
}

/** How many loads work now, as the one figure to keep an eye on while flicking. */
function LoadsNow() {
  const parts = useEditor((state) => state.present?.parts);
  const isSettled = useEditor((state) => state.present?.settled ?? true);
  if (!isSettled)
    return <p className="loads-now loads-unsettled">Nothing settles: a relay chatters or two sources fight.</p>;
  const loads = Object.values(parts ?? {}).filter((reading) => reading.on !== undefined);
  if (loads.length === 0) return null;
  return (
    <p className="loads-now">
      <strong>{loads.filter((reading) => reading.on).length}</strong> of {loads.length} loads on
    </p>
  );
}
