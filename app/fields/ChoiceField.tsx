import { useId } from "react";
import { FieldNotes, notesId } from "./FieldNotes.tsx";

interface Props {
  readonly label: string;
  readonly value: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  readonly help?: string | undefined;
  readonly onCommit: (value: string) => void;
}

/** One of a few. */
export function ChoiceField({ label, value, options, help, onCommit }: Props) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <span className="field-entry">
        <select
          id={id}
          value={value}
          aria-describedby={notesId({ id, help })}
          onChange={(event) => onCommit(event.target.value)}
        >
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.label}
            </option>
          ))}
        </select>
      </span>
      <FieldNotes id={id} help={help} />
    </div>
  );
}
