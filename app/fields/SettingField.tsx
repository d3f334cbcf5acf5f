import { ChoiceField } from "./ChoiceField.tsx";
import { FlagField } from "./FlagField.tsx";
import { QuantityField, usualText } from "./QuantityField.tsx";
import { RowsField } from "./RowsField.tsx";
import type { SettingFieldProps } from "./setting-field-props.ts";
import { TextField } from "./TextField.tsx";

/** The field that fits a setting, whatever kind of part it belongs to. */
export function SettingField(props: SettingFieldProps) {
  const { setting, given, onCommit } = props;
  switch (setting.type) {
    case "quantity":
    case "whole":
      return <AmountSetting {...props} />;
    case "choice":
      return <ChoiceSetting {...props} />;
    case "flag":
      return (
        <FlagField
          label={setting.label}
          help={setting.help}
          value={Boolean(given ?? setting.fallback)}
          onCommit={onCommit}
        />
      );
    case "text":
      return <TextSetting {...props} />;
    case "texts":
      return <TextsSetting {...props} />;
    case "list":
      return <RowsField {...props} field={SettingField} />;
    case "bench":
      return null;
  }
}

function AmountSetting({ setting, given, onCommit }: SettingFieldProps) {
  return (
    <QuantityField
      label={setting.label}
      help={setting.help}
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
}

const NOT_SAID = "";

function ChoiceSetting({ setting, given, onCommit }: SettingFieldProps) {
  const value = given ?? setting.fallback;
  const unsaid = setting.fallback === null ? [{ value: NOT_SAID, label: "not said" }] : [];
  return (
    <ChoiceField
      label={setting.label}
      help={setting.help}
      options={[...unsaid, ...(setting.options ?? [])]}
      value={typeof value === "string" ? value : NOT_SAID}
      onCommit={(chosen) => onCommit(chosen === NOT_SAID ? undefined : chosen)}
    />
  );
}

function TextSetting({ setting, given, onCommit }: SettingFieldProps) {
  const commit = (text: string): string | null => {
    const checked = text === "" ? null : setting.schema.safeParse(text);
    if (checked?.success === false)
      return `Got "${text}", wanted ${checked.error.issues[0]?.message ?? "something else"}`;
    onCommit(text === "" ? undefined : text);
    return null;
  };
  const value = typeof given === "string" ? given : "";
  return <TextField label={setting.label} help={setting.help} placeholder="not said" value={value} onCommit={commit} />;
}

function TextsSetting({ setting, given, onCommit }: SettingFieldProps) {
  return (
    <TextField
      label={setting.label}
      help={`${setting.help} One line for each; several on one line parted by commas.`}
      lines={4}
      value={textsAsLines(given)}
      onCommit={(text) => {
        onCommit(text === "" ? undefined : linesAsTexts(text));
        return null;
      }}
    />
  );
}

function textsAsLines(given: unknown): string {
  if (!Array.isArray(given)) return "";
  return given.map((one: unknown) => (Array.isArray(one) ? one.join(", ") : String(one))).join("\n");
}

function linesAsTexts(text: string): (string | string[])[] {
  return text.split("\n").map((line) => {
    const several = line.split(",").map((one) => one.trim());
    return several.length > 1 ? several.filter(Boolean) : (several[0] ?? "");
  });
}
