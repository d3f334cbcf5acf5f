import { useId } from "react";
import { FieldNotes, notesId } from "./FieldNotes.tsx";

interface Props {
  readonly label: string;
  readonly value: boolean;
  readonly help?: string | undefined;
  readonly onCommit: (value: boolean) => void;
}

/** Yes or no. */
export function FlagField({ label, value, help, onCommit }: Props) {
  const id = useId();
  return (
    <div className="field field-flag">
      <input
        id={id}
        type="checkbox"
        checked={value}
        aria-describedby={notesId({ id, help })}
        onChange={(event) => onCommit(event.target.checked)}
      />
      <label htmlFor={id}>{label}</label>
      <FieldNotes id={id} help={help} />
    </div>
  );
}
