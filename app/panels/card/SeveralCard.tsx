import { useDrawing } from "../../app-context.tsx";
import { counted } from "../../commands/command.ts";
import { CardButtons } from "./CardButtons.tsx";
import { WireFields } from "./WireFields.tsx";

/** Several things at once: what can be done to all of them. */
export function SeveralCard({ ids }: { readonly ids: ReadonlySet<string> }) {
  const drawing = useDrawing();
  const parts = drawing.parts.filter((part) => ids.has(part.id));
  const wires = drawing.wires.filter((wire) => ids.has(wire.id));
  const notes = ids.size - parts.length - wires.length;
  const names = [
    parts.length > 0 && `${parts.length} ${parts.length === 1 ? "part" : "parts"}`,
    wires.length > 0 && `${wires.length} ${wires.length === 1 ? "wire" : "wires"}`,
    notes > 0 && `${notes} ${notes === 1 ? "note" : "notes"}`,
  ];
  return (
    <>
      <h3 className="card-title">{names.filter(Boolean).join(" and ")}</h3>
      <CardButtons commands={["duplicate", "copy", "delete"]} />
      {parts.length > 1 && (
        <>
          <h4>Line up</h4>
          <CardButtons
            commands={[
              "align-left",
              "align-centre",
              "align-right",
              "align-top",
              "align-middle",
              "align-bottom",
              "space-across",
              "space-down",
              "turn",
              "flip",
            ]}
          />
        </>
      )}
      {wires.length > 0 && (
        <>
          <h4>All {counted(wires.length, "wire")}</h4>
          <WireFields wires={wires} />
        </>
      )}
    </>
  );
}
