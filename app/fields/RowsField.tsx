import type { ComponentType } from "react";
import type { SettingFieldProps } from "./setting-field-props.ts";

type Row = Readonly<Record<string, unknown>>;

const MOST_ROWS = 64;

interface Props extends SettingFieldProps {
  /** Draws one setting of a row; handed in, since a row may hold any. */
  readonly field: ComponentType<SettingFieldProps>;
}

/** A setting that is a list of rows: the ways of a block. Rows are numbered as their terminals are. */
export function RowsField({ setting, given, onCommit, field: Field }: Props) {
  const rows = (Array.isArray(given) ? given : (setting.fallback as Row[]).map(() => ({}))) as readonly Row[];
  const change = (index: number, key: string, value: unknown) =>
    onCommit(rows.map((row, at) => (at === index ? without({ ...row, [key]: value }) : row)));
  return (
    <fieldset className="rows">
      <legend>{setting.label}</legend>
      <p className="field-help">{setting.help}</p>
      <ol className="rows-list">
        {rows.map((row, index) => (
          <li key={index} aria-label={`${setting.label} ${index + 1}`}>
            {Object.entries(setting.row ?? {}).map(([key, one]) => (
              <Field
                key={key}
                setting={{ ...one, help: "" }}
                given={row[key]}
                onCommit={(value) => change(index, key, value)}
              />
            ))}
          </li>
        ))}
      </ol>
      <p className="row-buttons">
        <button type="button" disabled={rows.length >= MOST_ROWS} onClick={() => onCommit([...rows, {}])}>
          One more
        </button>
        <button type="button" disabled={rows.length <= 1} onClick={() => onCommit(rows.slice(0, -1))}>
          One less
        </button>
      </p>
    </fieldset>
  );
}

function without(row: Row): Row {
  return Object.fromEntries(Object.entries(row).filter(([, value]) => value !== undefined));
}
