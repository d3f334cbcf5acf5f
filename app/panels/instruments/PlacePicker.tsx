import { useId } from "react";
import { useDrawing } from "../../app-context.tsx";
import { partName, placeName, viewOf } from "../../store/part-view.ts";

interface Props {
  readonly label: string;
  readonly value: string | undefined;
  readonly offers: "terminals" | "wires" | "both";
  readonly onPick: (at: string) => void;
}

/** A place by name, for those who don't point. */
export function PlacePicker({ label, value, offers, onPick }: Props) {
  const drawing = useDrawing();
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <span className="field-entry">
        <select
          id={id}
          value={value ?? ""}
          onChange={(event) => event.target.value !== "" && onPick(event.target.value)}
        >
          <option value="">point, or choose</option>
          {offers !== "wires" &&
            drawing.parts.map((part) => (
              <optgroup key={part.id} label={partName(part)}>
                {viewOf(part).terminals.map(({ name }) => (
                  <option key={name} value={`${part.id}.${name}`}>
                    {partName(part)} {name}
                  </option>
                ))}
              </optgroup>
            ))}
          {offers !== "terminals" && (
            <optgroup label="Wires">
              {drawing.wires.map((wire) => (
                <option key={wire.id} value={wire.id}>
                  {placeName(drawing, wire.id)}
                </option>
              ))}
            </optgroup>
          )}
        </select>
      </span>
    </div>
  );
}
