import { referenceTables } from "../../../core/reference/index.ts";
import { useEditor } from "../../app-context.tsx";

const NOT_MODELLED = [
  "The moment a switch closes: inrush of filament lamps and capacitors, coil spikes. Start currents of motors are worked out as one steady figure.",
  "Warming up: copper is taken at one temperature for the whole drawing; fuses and contacts at their cold resistance.",
  "Batteries going flat, alternators and chargers regulating: each battery is a fixed voltage behind a resistance.",
  "Bad joints, corrosion, chafing, water: enter a joint's resistance where you know it.",
  "Signals: pulsed feeds and data lines are flagged, not worked out.",
];

/** What the numbers are worth. */
export function ExactnessPage() {
  const residualA = useEditor((state) => state.present?.residualA);
  const table = useEditor((state) => state.report?.capacityTable);
  return (
    <>
      <p>
        The circuit is solved exactly for the values given: in this situation the currents at the worst node balance to{" "}
        {residualA === null || residualA === undefined
          ? "no figure, as nothing settles"
          : `${residualA.toExponential(1)} A`}
        . What limits the answer is how well lengths, sizes and ratings are known.
      </p>
      {table && (
        <p>
          What wires may carry: {table.title}. Source: {table.source}.
        </p>
      )}
      <h4>Not modelled</h4>
      <ul>
        {NOT_MODELLED.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <h4>Tables used</h4>
      <dl className="tables-used">
        {referenceTables.map((one) => (
          <div key={one.id}>
            <dt>{one.title}</dt>
            <dd>
              {one.source} <span className="quiet">{one.edition}</span>
            </dd>
          </div>
        ))}
      </dl>
    </>
  );
}
