import { systemDefaults, systemOf, type Sheet, type SystemSettings } from "../../../core/document/index.ts";
import { formatDays, formatQuantity } from "../../../core/units/index.ts";
import { useApp, useDrawing, useEditor } from "../../app-context.tsx";
import { ChoiceField } from "../../fields/ChoiceField.tsx";
import { QuantityField } from "../../fields/QuantityField.tsx";
import { TextField } from "../../fields/TextField.tsx";
import { Readings, type ReadingRow } from "./Readings.tsx";

const SHEET_FIELDS: readonly (readonly [keyof Sheet, string])[] = [
  ["title", "Title"],
  ["vehicle", "Vehicle"],
  ["drawnBy", "Drawn by"],
  ["revision", "Revision"],
  ["date", "Date"],
];

type SystemChange = { readonly [K in keyof SystemSettings]?: SystemSettings[K] | undefined };

/** The sheet and the vehicle's own electrics, which hold for the whole drawing. */
export function SheetCard() {
  const { editor } = useApp();
  const { sheet = {} } = useDrawing();
  const setSheet = (key: keyof Sheet, label: string, text: string): null => {
    editor.dispatch({
      label: `${label} of the sheet`,
      edits: [{ op: "set-sheet", change: { [key]: text || undefined } }],
    });
    return null;
  };
  return (
    <>
      <h3 className="card-title">{sheet.title ?? "Untitled drawing"}</h3>
      <SheetNow />
      <h4>Sheet</h4>
      {SHEET_FIELDS.map(([key, label]) => (
        <TextField
          key={key}
          label={label}
          value={sheet[key] ?? ""}
          placeholder="not said"
          onCommit={(text) => setSheet(key, label, text)}
        />
      ))}
      <TextField
        label="Notes"
        lines={3}
        value={sheet.notes ?? ""}
        onCommit={(text) => setSheet("notes", "Notes", text)}
      />
      <h4>Vehicle</h4>
      <VehicleFields />
    </>
  );
}

function SheetNow() {
  const summary = useEditor((state) => state.report?.summary);
  if (summary === undefined) return null;
  const rows: ReadingRow[] = [];
  rows.push([
    "Drain at rest",
    summary.restDrainA === null ? "no settled value" : formatQuantity(summary.restDrainA, "A"),
  ]);
  if (summary.daysToHalf !== null) rows.push(["Half flat in", formatDays(summary.daysToHalf)]);
  rows.push(["Positions looked at", String(summary.combinations)]);
  return (
    <>
      <Readings rows={rows} />
      {summary.unproved.map((line) => (
        <p key={line} className="quiet">
          {line}
        </p>
      ))}
    </>
  );
}

interface Amount {
  readonly key:
    | "ambientC"
    | "conductorC"
    | "cautionDropPercent"
    | "faultDropPercent"
    | "fuseLoadPercent"
    | "alternatorA"
    | "baseLoadA";
  readonly label: string;
  readonly unit: "degC" | "A" | "";
  readonly min: number;
  readonly max: number;
  readonly help: string;
}

const AMOUNTS: readonly Amount[] = [
  {
    key: "ambientC",
    label: "Heat around wires",
    unit: "degC",
    min: -60,
    max: 150,
    help: "Where a wire does not say its own.",
  },
  {
    key: "conductorC",
    label: "Heat of the copper",
    unit: "degC",
    min: -60,
    max: 200,
    help: "For resistance and voltage drop.",
  },
  {
    key: "cautionDropPercent",
    label: "Caution from this drop, %",
    unit: "",
    min: 0.1,
    max: 100,
    help: "Of the source's volts, feed and return together.",
  },
  { key: "faultDropPercent", label: "Fault from this drop, %", unit: "", min: 0.1, max: 100, help: "" },
  {
    key: "fuseLoadPercent",
    label: "Continuous load on a fuse, %",
    unit: "",
    min: 10,
    max: 100,
    help: "60 in an engine bay, 80 in a cab by one older guide.",
  },
  { key: "alternatorA", label: "Alternator", unit: "A", min: 0, max: 2000, help: "Hot output, not the nameplate." },
  {
    key: "baseLoadA",
    label: "The vehicle's own load",
    unit: "A",
    min: 0,
    max: 2000,
    help: "What it draws while running without your additions.",
  },
];

function VehicleFields() {
  const { editor } = useApp();
  const drawing = useDrawing();
  const system = systemOf(drawing);
  const set = (label: string, change: SystemChange) =>
    editor.dispatch({ label: `${label} of the vehicle`, edits: [{ op: "set-system", change }] });
  return (
    <>
      <ChoiceField
        label="System"
        value={String(system.nominalV)}
        options={VOLTAGES}
        onCommit={(value) => set("Volts", { nominalV: value === "24" ? 24 : 12 })}
      />
      <ChoiceField
        label="Wire sizes"
        value={system.sizes}
        options={SIZES}
        onCommit={(value) => set("Wire sizes", { sizes: value === "mm2" ? "mm2" : "awg" })}
      />
      <ChoiceField
        label="What a wire may carry"
        value={system.capacityTable}
        options={TABLES}
        help="The table used is named in the report and on the papers."
        onCommit={(value) =>
          set("Capacity table", { capacityTable: value === "insulation" ? "insulation" : "vehicle" })
        }
      />
      {AMOUNTS.map(({ key, label, unit, min, max, help }) => (
        <QuantityField
          key={key}
          label={label}
          unit={unit}
          min={min}
          max={max}
          help={help}
          value={drawing.system?.[key]}
          usual={systemDefaults[key] === null ? "not said" : `${formatQuantity(systemDefaults[key], unit)}, usual`}
          onCommit={(value) => set(label, { [key]: value ?? undefined })}
        />
      ))}
    </>
  );
}

const VOLTAGES = [
  { value: "12", label: "12 V" },
  { value: "24", label: "24 V" },
];
const SIZES = [
  { value: "awg", label: "AWG" },
  { value: "mm2", label: "mm²" },
];
const TABLES = [
  { value: "vehicle", label: "by the vehicle table, 40 °C" },
  { value: "insulation", label: "by insulation rating" },
];
