import { useId, useState, type ReactNode } from "react";

interface Props {
  readonly label: string;
  /** As shown; empty for nothing said. */
  readonly value: string;
  readonly placeholder?: string;
  readonly help?: string | undefined;
  readonly lines?: number;
  /** Offered while typing. */
  readonly options?: readonly string[];
  /** Takes what was typed; a line that says what is wrong keeps the field open for another try. */
  readonly onCommit: (text: string) => string | null;
  /** Stands after the field: a unit, a swatch. */
  readonly after?: ReactNode;
}

/** A line of text that counts when it is left or Enter is pressed; Escape takes it back. */
export function TextField({ label, value, placeholder, help, lines, options, onCommit, after }: Props) {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const commit = () => {
    if (typed === null) return;
    const wrong = typed.trim() === value.trim() ? null : onCommit(typed.trim());
    setTrouble(wrong);
    if (wrong === null) setTyped(null);
  };
  const giveUp = () => {
    setTyped(null);
    setTrouble(null);
  };
  const shared = {
    id,
    value: typed ?? value,
    placeholder,
    "aria-invalid": trouble !== null,
    "aria-describedby": trouble !== null ? `${id}-trouble` : help ? `${id}-help` : undefined,
    onBlur: commit,
  };
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <span className="field-entry">
        {lines === undefined ? (
          <input
            {...shared}
            type="text"
            autoComplete="off"
            list={options ? `${id}-options` : undefined}
            onChange={(event) => setTyped(event.target.value)}
            onKeyDown={(event) => {
              if (event.key === "Enter") commit();
              if (event.key === "Escape" && typed !== null) {
                event.stopPropagation();
                giveUp();
              }
            }}
          />
        ) : (
          <textarea {...shared} rows={lines} onChange={(event) => setTyped(event.target.value)} />
        )}
        {after}
      </span>
      {options && (
        <datalist id={`${id}-options`}>
          {options.map((option) => (
            <option key={option} value={option} />
          ))}
        </datalist>
      )}
      {trouble !== null && (
        <p className="field-trouble" id={`${id}-trouble`} role="alert">
          {trouble}
        </p>
      )}
      {help && (
        <p className="field-help" id={`${id}-help`}>
          {help}
        </p>
      )}
    </div>
  );
}
