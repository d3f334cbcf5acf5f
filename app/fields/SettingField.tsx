import type { Setting } from "../../core/parts/index.ts";
import { ChoiceField } from "./ChoiceField.tsx";
import { FlagField } from "./FlagField.tsx";
import { QuantityField, usualText } from "./QuantityField.tsx";
import { RowsField } from "./RowsField.tsx";
import { TextField } from "./TextField.tsx";

interface Props {
  readonly setting: Setting<unknown>;
  /** As the file gives it; `undefined`: nothing said. */
  readonly given: unknown;
  readonly onCommit: (value: unknown) => void;
}

const NOT_SAID = "";

/** The field that fits a setting, whatever kind of part it belongs to. */
export function SettingField({ setting, given, onCommit }: Props) {
  const { label, help } = setting;
  switch (setting.type) {
    case "quantity":
    case "whole":
      return (
        <QuantityField
          label={label}
          help={help}
          unit={setting.unit}
          value={given as number | null | undefined}
          min={setting.min}
          max={setting.max}
          isWhole={setting.type === "whole"}
          usual={usualText(setting.fallback, setting.unit, setting.follows)}
          noneWord="none"
          onCommit={(value) => onCommit(value === null && setting.fallback === null ? undefined : value)}
        />
      );
    case "choice": {
      const options = setting.options ?? [];
      const unsaid = setting.fallback === null ? [{ value: NOT_SAID, label: "not said" }] : [];
      return (
        <ChoiceField
          label={label}
          help={help}
          options={[...unsaid, ...options]}
          value={String(given ?? setting.fallback ?? NOT_SAID)}
          onCommit={(value) => onCommit(value === NOT_SAID ? undefined : value)}
        />
      );
    }
    case "flag":
      return <FlagField label={label} help={help} value={Boolean(given ?? setting.fallback)} onCommit={onCommit} />;
    case "text":
      return (
        <TextField
          label={label}
          help={help}
          placeholder="not said"
          value={typeof given === "string" ? given : ""}
          onCommit={(text) => {
            if (text === "") {
              onCommit(undefined);
              return null;
            }
            const checked = setting.schema.safeParse(text);
            if (checked.success) onCommit(text);
            return checked.success
              ? null
              : `Got "${text}", wanted ${checked.error.issues[0]?.message ?? "something else"}`;
          }}
        />
      );
    case "texts":
      return (
        <TextField
          label={label}
          help={`${help} One line for each; several on one line parted by commas.`}
          lines={4}
          value={textsAsLines(given)}
          onCommit={(text) => {
            onCommit(text === "" ? undefined : linesAsTexts(text));
            return null;
          }}
        />
      );
    case "list":
      return <RowsField setting={setting} given={given} onCommit={onCommit} />;
    case "bench":
      return null;
  }
}

function textsAsLines(given: unknown): string {
  return Array.isArray(given)
    ? given.map((one: unknown) => (Array.isArray(one) ? one.join(", ") : String(one))).join("\n")
    : "";
}

function linesAsTexts(text: string): (string | string[])[] {
  return text.split("\n").map((line) => {
    const several = line.split(",").map((one) => one.trim());
    return several.length > 1 ? several.filter(Boolean) : (several[0] ?? "");
  });
}
