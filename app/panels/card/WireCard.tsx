import type { Wire } from "../../../core/document/index.ts";
import { formatNumber, formatQuantity } from "../../../core/units/index.ts";
import { useDrawing, useEditor } from "../../app-context.tsx";
import { placeName } from "../../store/part-view.ts";
import { useWords } from "../../use-words.ts";
import { CardButtons } from "./CardButtons.tsx";
import { Readings, type ReadingRow } from "./Readings.tsx";
import { SnagsHere } from "./SnagsHere.tsx";
import { WireFields } from "./WireFields.tsx";
import { WireSwatch } from "./WireSwatch.tsx";

export function WireCard({ wire }: { readonly wire: Wire }) {
  const drawing = useDrawing();
  const words = useWords();
  return (
    <>
      <header className="card-head">
        <span className="card-picture">
          <WireSwatch colour={wire.colour} />
        </span>
        <div>
          <h3 className="card-title">{words(`Wire ${wire.id.toUpperCase()}${wire.label ? ` ${wire.label}` : ""}`)}</h3>
          <p className="card-kind">
            {placeName(drawing, wire.from)} <span aria-hidden="true">→</span>
            <span className="unseen"> to </span> {placeName(drawing, wire.to)}
          </p>
        </div>
      </header>
      <CardButtons commands={["delete"]} />
      <WireNow wire={wire} />
      <SnagsHere places={[wire.id]} />
      <h4>Settings</h4>
      <WireFields wires={[wire]} />
    </>
  );
}

function WireNow({ wire }: { readonly wire: Wire }) {
  const reading = useEditor((state) => state.present?.wires[wire.id]);
  const standing = useEditor((state) => state.report?.wires[wire.id]);
  const rows: ReadingRow[] = [];
  if (reading !== undefined) {
    const drop = reading.dropV === null ? "not known" : formatQuantity(reading.dropV, "V");
    rows.push(["Amps", reading.amps === null ? "no settled value" : formatQuantity(reading.amps, "A")]);
    rows.push(["Drop", reading.dropPercent === null ? drop : `${drop}, ${formatNumber(reading.dropPercent)} %`]);
  }
  if (standing !== undefined) {
    rows.push(["May carry", standing.capacityA === null ? "not known" : formatQuantity(standing.capacityA, "A")]);
    rows.push(["Guarded by", guardWords(standing.guard)]);
    if (standing.guard === null)
      rows.push([
        "Unguarded",
        standing.unguardedM === null ? "length not known" : `${formatNumber(standing.unguardedM)} m`,
      ]);
    if (standing.faultA !== null) rows.push(["Dead short", formatQuantity(standing.faultA, "A")]);
    if (standing.clearsWithinS !== null) rows.push(["Cleared within", formatQuantity(standing.clearsWithinS, "s")]);
  }
  return <Readings rows={rows} />;
}

function guardWords(guard: { readonly at: string; readonly ratingA: number | null } | null | undefined): string {
  if (guard === undefined) return "needs none: no source reaches it";
  if (guard === null) return "nothing";
  return `${guard.at.toUpperCase()}, ${guard.ratingA === null ? "rating not known" : formatQuantity(guard.ratingA, "A")}`;
}
