import { systemOf, type Wire } from "../../../core/document/index.ts";
import { soldWireSizes } from "../../../core/reference/index.ts";
import { formatLength, parseLengthM, parseWireSize, typedErrorText, wireSizeText } from "../../../core/units/index.ts";
import { useDrawing, useEditor } from "../../app-context.tsx";
import { ChoiceField } from "../../fields/ChoiceField.tsx";
import { ColourField } from "../../fields/ColourField.tsx";
import { FlagField } from "../../fields/FlagField.tsx";
import { QuantityField } from "../../fields/QuantityField.tsx";
import { TextField } from "../../fields/TextField.tsx";
import { WireEnds } from "./WireEnds.tsx";
import { useWireEditing, type WireEditing } from "./use-wire-editing.ts";

const MAINS = [
  { value: "", label: "no, an ordinary wire" },
  { value: "starter", label: "starter main" },
  { value: "alternator", label: "alternator main" },
  { value: "winch", label: "winch main" },
];

/** The settings of one wire, or the same ones given to several. A field where they differ is empty and says so. */
export function WireFields({ wires }: { readonly wires: readonly Wire[] }) {
  const editing = useWireEditing(wires);
  return (
    <>
      <CableFields {...editing} />
      {wires.length === 1 && (
        <TextField
          label="Label"
          value={wires[0]!.label ?? ""}
          placeholder="what is printed on it"
          onCommit={(label) => editing.set("Label", { label: label || undefined })}
        />
      )}
      <SurroundingFields {...editing} />
      {wires.length === 1 && <WireEnds wire={wires[0]!} />}
      <ChoiceField
        label="Unfused main by design"
        value={editing.shared("main") ?? ""}
        options={MAINS}
        onCommit={(main) => editing.set("Main", { main: (main || undefined) as Wire["main"] })}
      />
      <FlagField
        label="Keep this size"
        value={editing.shared("fixed")?.includes("size") ?? false}
        help="Size it then leaves it alone."
        onCommit={(isKept) => editing.set("Keeping the size", { fixed: isKept ? KEPT_SIZE : undefined })}
      />
      <FlagField
        label="Measured, or run by ourselves"
        value={editing.shared("measured") ?? true}
        help="Off for a wire of the vehicle nobody has measured yet."
        onCommit={(measured) => editing.set("Measured", { measured })}
      />
    </>
  );
}

/** What Size it leaves alone. */
const KEPT_SIZE = ["size"];

function CableFields({ shared, unsaid, set }: WireEditing) {
  const { sizes } = systemOf(useDrawing());
  const units = useEditor((state) => state.preferences.units);
  const metres = shared("metres");
  const commitSize = (text: string) => {
    const typed = text === "" ? null : parseWireSize(text);
    if (typed?.ok === false) return typedErrorText(typed);
    return set("Size", { size: typed === null ? undefined : wireSizeText(typed.value) });
  };
  const commitLength = (text: string) => {
    const typed = text === "" ? null : parseLengthM(text, units);
    if (typed?.ok === false) return typedErrorText(typed);
    if (typed !== null && typed.value > MOST_METRES) return `Got ${text}, wanted at most ${MOST_METRES} m`;
    return set("Length", { metres: typed?.value });
  };
  return (
    <>
      <TextField
        label="Size"
        value={shared("size")?.replace("mm2", "mm²") ?? ""}
        placeholder={unsaid("size")}
        options={soldWireSizes(sizes).map((size) => size.replace("mm2", "mm²"))}
        onCommit={commitSize}
      />
      <TextField
        label="Length, one way"
        value={metres === undefined ? "" : lengthText(metres, units)}
        placeholder={unsaid("metres")}
        help={
          units === "us" ? "A bare number is feet; 2.3 m works too." : "A bare number is metres; 7 ft 6 in works too."
        }
        onCommit={commitLength}
      />
      <ColourField
        value={shared("colour")}
        unsaid={unsaid("colour")}
        onCommit={(colour) => set("Colour", { colour })}
      />
    </>
  );
}

/** The circuit file's own limit. */
const MOST_METRES = 1000;

/** As it can be typed again: every digit in metres, feet and inches to the nearest inch. */
function lengthText(lengthM: number, units: "metric" | "us"): string {
  return units === "us" ? formatLength(lengthM, "us").replace(/ \(.*/, "") : `${lengthM} m`;
}

function SurroundingFields({ shared, unsaid, set }: WireEditing) {
  const { ambientC } = systemOf(useDrawing());
  return (
    <>
      <QuantityField
        label="Insulation good for"
        unit="degC"
        min={40}
        max={300}
        value={shared("insulationC")}
        usual={unsaid("insulationC", "105 °C, usual")}
        onCommit={(value) => set("Insulation", { insulationC: value ?? undefined })}
      />
      <QuantityField
        label="Heat around it"
        unit="degC"
        min={-60}
        max={150}
        value={shared("ambientC")}
        usual={unsaid("ambientC", `${ambientC} °C, as the sheet says`)}
        onCommit={(value) => set("Heat around", { ambientC: value ?? undefined })}
      />
      <QuantityField
        label="Loaded wires in its bundle"
        unit=""
        isWhole
        min={1}
        max={100}
        value={shared("bundle")}
        usual={unsaid("bundle", "1, usual")}
        onCommit={(value) => set("Bundle", { bundle: value ?? undefined })}
      />
      <FlagField
        label="In a sheath of its own"
        value={shared("sheathed") ?? false}
        onCommit={(sheathed) => set("Sheath", { sheathed })}
      />
    </>
  );
}
