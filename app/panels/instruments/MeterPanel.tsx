import type { MeterReading } from "../../../core/meter/index.ts";
import { formatQuantity } from "../../../core/units/index.ts";
import { useApp, useEditor } from "../../app-context.tsx";
import type { MeterDial } from "../../store/editor-state.ts";
import { useConsultation } from "../../use-consultation.ts";
import { PlacePicker } from "./PlacePicker.tsx";

const DIALS: readonly { readonly dial: MeterDial; readonly sign: string; readonly name: string }[] = [
  { dial: "volts", sign: "V", name: "Volts between two terminals" },
  { dial: "amps", sign: "A", name: "Amps through a wire, by clamp" },
  { dial: "ohms", sign: "Ω", name: "Ohms between two terminals, power off" },
];

/** Two leads to place anywhere, or a clamp round a wire. */
export function MeterPanel() {
  const { editor } = useApp();
  const dial = useEditor((state) => state.dial);
  return (
    <>
      <fieldset className="dial" aria-label="Dial">
        {DIALS.map((one) => (
          <button
            key={one.dial}
            type="button"
            aria-pressed={dial === one.dial}
            aria-label={one.name}
            title={one.name}
            onClick={() => editor.takeInstrument("meter", one.dial)}
          >
            {one.sign}
          </button>
        ))}
      </fieldset>
      {dial === "amps" ? <Clamp /> : <TwoLeads dial={dial} />}
    </>
  );
}

function TwoLeads({ dial }: { readonly dial: "volts" | "ohms" }) {
  const { editor } = useApp();
  const leads = useEditor((state) => state.leads);
  const red = leads.find((lead) => lead.mark === "red")?.at;
  const black = leads.find((lead) => lead.mark === "black")?.at;
  const asks = red === undefined || black === undefined ? null : { dial, red, black };
  const reading = useConsultation("meter", `${dial} ${red} ${black}`, asks);
  const put = (mark: "red" | "black") => (at: string) =>
    editor.set({ leads: [...leads.filter((lead) => lead.mark !== mark), { at, mark }] });
  return (
    <>
      <Display reading={reading} hint={red === undefined ? "red lead?" : black === undefined ? "black lead?" : ""} />
      <PlacePicker label="Red lead" value={red} offers="terminals" onPick={put("red")} />
      <PlacePicker label="Black lead" value={black} offers="terminals" onPick={put("black")} />
      {dial === "ohms" && (
        <p className="quiet">Every battery and feed is taken off; relays are at rest. Electronics read open.</p>
      )}
    </>
  );
}

function Clamp() {
  const { editor } = useApp();
  const wire = useEditor((state) => state.leads[0]?.at);
  const reading = useConsultation("clamp", wire ?? "", wire === undefined ? null : { wire });
  return (
    <>
      <Display reading={reading} hint={wire === undefined ? "which wire?" : ""} />
      <PlacePicker label="Clamp round" value={wire} offers="wires" onPick={(at) => editor.probe(at)} />
    </>
  );
}

function Display({ reading, hint }: { readonly reading: MeterReading | null | undefined; readonly hint: string }) {
  return (
    <output className="display" aria-live="polite">
      {hint || displayWords(reading)}
    </output>
  );
}

const UNITS = { volts: "V", amps: "A", ohms: "ohm" } as const;

function displayWords(reading: MeterReading | null | undefined): string {
  if (reading === undefined || reading === null) return "· · ·";
  switch (reading.says) {
    case "open":
      return "OL";
    case "unsettled":
      return "unsteady";
    default:
      return formatQuantity(reading.value, UNITS[reading.says]);
  }
}
