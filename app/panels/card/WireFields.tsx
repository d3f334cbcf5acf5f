import type { Edit, Wire } from "../../../core/document/index.ts";
import { systemOf, wireSurroundings } from "../../../core/document/index.ts";
import { formatLength, parseLengthM, parseWireSize, typedErrorText, wireSizeText } from "../../../core/units/index.ts";
import { useApp, useDrawing, useEditor } from "../../app-context.tsx";
import { counted } from "../../commands/command.ts";
import { ChoiceField } from "../../fields/ChoiceField.tsx";
import { ColourField } from "../../fields/ColourField.tsx";
import { FlagField } from "../../fields/FlagField.tsx";
import { QuantityField } from "../../fields/QuantityField.tsx";
import { TextField } from "../../fields/TextField.tsx";

type Change = Partial<{ readonly [K in keyof Wire]: Wire[K] | undefined }>;

const SIZES = {
  awg: [
    "20 AWG",
    "18 AWG",
    "16 AWG",
    "14 AWG",
    "12 AWG",
    "10 AWG",
    "8 AWG",
    "6 AWG",
    "4 AWG",
    "2 AWG",
    "1/0 AWG",
    "2/0 AWG",
  ],
  mm2: [
    "0.5 mm2",
    "0.75 mm2",
    "1 mm2",
    "1.5 mm2",
    "2.5 mm2",
    "4 mm2",
    "6 mm2",
    "10 mm2",
    "16 mm2",
    "25 mm2",
    "35 mm2",
    "50 mm2",
  ],
} as const;

const MAINS = [
  { value: "", label: "no, an ordinary wire" },
  { value: "starter", label: "starter main" },
  { value: "alternator", label: "alternator main" },
  { value: "winch", label: "winch main" },
];

/** The settings of one wire, or the same ones given to several. A field where they differ is empty and says so. */
export function WireFields({ wires }: { readonly wires: readonly Wire[] }) {
  const { editor } = useApp();
  const system = systemOf(useDrawing());
  const units = useEditor((state) => state.preferences.units);
  const first = wires[0]!;
  const same = <K extends keyof Wire>(key: K) => wires.every((wire) => wire[key] === first[key]);
  const shared = <K extends keyof Wire>(key: K): Wire[K] | undefined => (same(key) ? first[key] : undefined);
  const unsaid = (key: keyof Wire, usual = "not said") => (same(key) ? usual : "differ");
  const set = (what: string, change: Change): null => {
    const name = wires.length === 1 ? `wire ${first.id.toUpperCase()}` : counted(wires.length, "wire");
    const edits = wires.map((wire): Edit => ({ op: "set-wire", id: wire.id, change }));
    editor.dispatch({ label: `${what} of ${name}`, edits });
    return null;
  };
  const surroundings = wireSurroundings(first, system);
  const metres = shared("metres");
  return (
    <>
      <TextField
        label="Size"
        value={shared("size")?.replace("mm2", "mm²") ?? ""}
        placeholder={unsaid("size")}
        options={SIZES[system.sizes]}
        onCommit={(text) => commitSize(text, (size) => set("Size", { size }))}
      />
      <TextField
        label="Length, one way"
        value={metres === undefined ? "" : lengthText(metres, units)}
        placeholder={unsaid("metres")}
        help={
          units === "us" ? "A bare number is feet; 2.3 m works too." : "A bare number is metres; 7 ft 6 in works too."
        }
        onCommit={(text) => commitLength(text, units, (length) => set("Length", { metres: length }))}
      />
      <ColourField
        value={shared("colour")}
        unsaid={unsaid("colour")}
        onCommit={(colour) => set("Colour", { colour })}
      />
      {wires.length === 1 && (
        <TextField
          label="Label"
          value={first.label ?? ""}
          placeholder="what is printed on it"
          onCommit={(label) => set("Label", { label: label || undefined })}
        />
      )}
      <QuantityField
        label="Insulation good for"
        unit="degC"
        min={40}
        max={300}
        value={shared("insulationC")}
        usual={unsaid("insulationC", "105 °C, usual")}
        onCommit={(insulationC) => set("Insulation", { insulationC: insulationC ?? undefined })}
      />
      <QuantityField
        label="Heat around it"
        unit="degC"
        min={-60}
        max={150}
        value={shared("ambientC")}
        usual={unsaid("ambientC", `${surroundings.ambientC} °C, as the sheet says`)}
        onCommit={(ambientC) => set("Heat around", { ambientC: ambientC ?? undefined })}
      />
      <QuantityField
        label="Loaded wires in its bundle"
        unit=""
        isWhole
        min={1}
        max={100}
        value={shared("bundle")}
        usual={unsaid("bundle", "1, usual")}
        onCommit={(bundle) => set("Bundle", { bundle: bundle ?? undefined })}
      />
      <FlagField
        label="In a sheath of its own"
        value={shared("sheathed") ?? false}
        onCommit={(sheathed) => set("Sheath", { sheathed })}
      />
      <ChoiceField
        label="Unfused main by design"
        value={shared("main") ?? ""}
        options={MAINS}
        onCommit={(main) => set("Main", { main: (main || undefined) as Wire["main"] })}
      />
      <FlagField
        label="Measured, or run by ourselves"
        value={shared("measured") ?? true}
        help="Off for a wire of the vehicle nobody has measured yet."
        onCommit={(measured) => set("Measured", { measured })}
      />
    </>
  );
}

function commitSize(text: string, set: (size: string | undefined) => null): string | null {
  if (text === "") return set(undefined);
  const typed = parseWireSize(text);
  return typed.ok ? set(wireSizeText(typed.value)) : typedErrorText(typed);
}

function commitLength(text: string, units: "metric" | "us", set: (metres: number | undefined) => null): string | null {
  if (text === "") return set(undefined);
  const typed = parseLengthM(text, units);
  if (!typed.ok) return typedErrorText(typed);
  return typed.value <= 1000 ? set(typed.value) : `Got ${text}, wanted at most 1000 m`;
}

/** As it can be typed again: every digit in metres, feet and inches to the nearest inch. */
function lengthText(lengthM: number, units: "metric" | "us"): string {
  return units === "us" ? formatLength(lengthM, "us").replace(/ \(.*/, "") : `${lengthM} m`;
}
