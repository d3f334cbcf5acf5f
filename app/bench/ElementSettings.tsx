import { elementForms, type Setting } from "../../core/parts/index.ts";
import { SettingField } from "../fields/SettingField.tsx";
import type { BenchElement } from "./symbol.ts";

interface Props {
  readonly element: BenchElement;
  readonly onChange: (change: Readonly<Record<string, unknown>>) => void;
}

/** Settings shown at once; the others are a press away. */
const SHOWN = 4;

/** What can be set on one element inside a symbol, with its units. */
export function ElementSettings({ element, onChange }: Props) {
  const settings = Object.entries<Setting<unknown>>(elementForms[element.type].settings).filter(
    ([key]) => key !== "closedWhen" || element.coil !== undefined,
  );
  const field = ([key, setting]: (typeof settings)[number]) => (
    <SettingField key={key} setting={setting} given={element[key]} onCommit={(value) => onChange({ [key]: value })} />
  );
  return (
    <>
      {settings.slice(0, SHOWN).map(field)}
      {settings.length > SHOWN && (
        <details>
          <summary>More settings</summary>
          <div className="bench-more">{settings.slice(SHOWN).map(field)}</div>
        </details>
      )}
    </>
  );
}
