import { useId } from "react";

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
        aria-describedby={help ? `${id}-help` : undefined}
        onChange={(event) => onCommit(event.target.checked)}
      />
      <label htmlFor={id}>{label}</label>
      {help && (
        <p className="field-help" id={`${id}-help`}>
          {help}
        </p>
      )}
    </div>
  );
}
