interface Props {
  /** Id of the field itself; the field says it is described by `notesId`. */
  readonly id: string;
  readonly help?: string | undefined;
  readonly trouble?: string | null;
}

/** What is wrong with what was typed, and the help that shows while the field is in use. */
export function FieldNotes({ id, help, trouble = null }: Props) {
  return (
    <>
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
    </>
  );
}

/** Id of the note that describes the field; `undefined` without one. */
export function notesId({ id, help, trouble = null }: Props): string | undefined {
  if (trouble !== null) return `${id}-trouble`;
  return help ? `${id}-help` : undefined;
}
