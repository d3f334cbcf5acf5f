import type { Part } from "../../../core/document/index.ts";
import type { PartReading } from "../../../core/readings/index.ts";
import { formatNumber, formatQuantity } from "../../../core/units/index.ts";
import { useEditor } from "../../app-context.tsx";
import { viewOf } from "../../store/part-view.ts";
import { Readings, type ReadingRow } from "./Readings.tsx";

/** What the part is doing in the present situation. */
export function PartNow({ part }: { readonly part: Part }) {
  const reading = useEditor((state) => state.present?.parts[part.id]);
  const position = useEditor((state) => state.positions[part.id]);
  const { control } = viewOf(part);
  const isSettled = useEditor((state) => state.present?.settled ?? true);
  const rows = rowsOf(reading ?? {}, isSettled ? "none" : "no settled value");
  if (control !== null) rows.unshift(["Stands at", position ?? control.positions[0]!]);
  return <Readings rows={rows} />;
}

const percent = (value: number) => `${formatNumber(value)} %`;

/** `unknown` stands where there is no value: nothing settles, or it is on no network. */
function rowsOf(reading: PartReading, unknown: string): ReadingRow[] {
  const rows: ReadingRow[] = [];
  const add = (name: string, value: number | null | undefined, show: (value: number) => string) => {
    if (value !== undefined) rows.push([name, value === null ? unknown : show(value)]);
  };
  if (reading.on !== undefined) rows.push(["Working", reading.on === null ? unknown : reading.on ? "on" : "off"]);
  if (reading.pulledIn !== undefined)
    rows.push(["Relay", reading.pulledIn === null ? "chatters" : reading.pulledIn ? "pulled in" : "at rest"]);
  add("Coil", reading.coilV, (volts) => formatQuantity(volts, "V"));
  add("Volts", reading.volts, (volts) => formatQuantity(volts, "V"));
  add("Amps", reading.amps, (amps) => formatQuantity(amps, "A"));
  add("Output", reading.outAmps, (amps) => formatQuantity(amps, "A"));
  add("Watts", reading.watts, (watts) => formatQuantity(watts, "W"));
  add("Load", reading.loadPercent, percent);
  add("At start", reading.startAmps, (amps) => formatQuantity(amps, "A"));
  add("Volts at start", reading.startVolts, (volts) => formatQuantity(volts, "V"));
  for (const [way, { amps, loadPercent }] of Object.entries(reading.ways ?? {})) {
    const load = loadPercent === undefined || loadPercent === null ? "" : `, ${percent(loadPercent)} of its rating`;
    rows.push([`Way ${way}`, amps === null ? unknown : `${formatQuantity(amps, "A")}${load}`]);
  }
  return rows;
}
