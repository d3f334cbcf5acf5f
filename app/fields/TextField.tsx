import { useId, useState } from "react";
import { FieldNotes, notesId } from "./FieldNotes.tsx";

interface Props {
  readonly label: string;
  /** As shown; empty for nothing said. */
  readonly value: string;
  readonly placeholder?: string;
  readonly help?: string | undefined;
  readonly lines?: number;
  /** Letters. */
  readonly most?: number;
  /** Offered while typing. */
  readonly options?: readonly string[];
  /** Takes what was typed; a line that says what is wrong keeps the field open for another try. */
  readonly onCommit: (text: string) => string | null;
}

/** A line of text that counts when it is left or Enter is pressed; Escape takes it back. */
export function TextField({ label, value, placeholder, help, lines, most, options, onCommit }: Props) {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const commit = () => {
    if (typed === null) return;
    const wrong = typed.trim() === value.trim() ? null : onCommit(typed.trim());
    setTrouble(wrong);
    if (wrong === null) setTyped(null);
  };
  const entry = {
    id,
    value: typed ?? value,
    placeholder,
    maxLength: most,
    "aria-invalid": trouble !== null,
    "aria-describedby": notesId({ id, help, trouble }),
    onBlur: commit,
    onChange: (event: { target: { value: string } }) => setTyped(event.target.value),
  };
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <span className="field-entry">
        {lines !== undefined ? (
          <textarea {...entry} rows={lines} />
        ) : (
          <input
            {...entry}
            type="text"
            autoComplete="off"
            list={options ? `${id}-options` : undefined}
            onKeyDown={(event) => {
              if (event.key === "Enter") commit();
              if (event.key !== "Escape" || typed === null) return;
              event.stopPropagation();
              setTyped(null);
              setTrouble(null);
            }}
          />
        )}
      </span>
      {options && <Offered id={`${id}-options`} options={options} />}
      <FieldNotes id={id} help={help} trouble={trouble} />
    </div>
  );
}

function Offered({ id, options }: { readonly id: string; readonly options: readonly string[] }) {
  return (
    <datalist id={id}>
      {options.map((option) => (
        <option key={option} value={option}>
          {option}
        </option>
      ))}
    </datalist>
  );
}
