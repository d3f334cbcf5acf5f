import type { Part } from "../../../core/document/index.ts";
import { useApp, useDrawing } from "../../app-context.tsx";
import { changeProps } from "../../commands/change-props.ts";
import { FlagField } from "../../fields/FlagField.tsx";
import { SettingField } from "../../fields/SettingField.tsx";
import { TextField } from "../../fields/TextField.tsx";
import { partName, viewOf } from "../../store/part-view.ts";
import { useWords } from "../../use-words.ts";

/** What Size it leaves alone. */
const KEPT_RATING = ["rating"];

/** The part's label and every setting of its kind. */
export function PartSettings({ part }: { readonly part: Part }) {
  const { editor } = useApp();
  const drawing = useDrawing();
  const words = useWords();
  const { kind } = viewOf(part);
  const id = part.id.toUpperCase();
  const change = (
    label: string,
    edit: { readonly label?: string | undefined; readonly fixed?: readonly string[] | undefined },
  ): null => {
    editor.dispatch({ label, edits: [{ op: "set-part", id: part.id, change: edit }] });
    return null;
  };
  const set = (key: string, label: string, value: unknown) =>
    editor.dispatch({
      label: `${partName(part)}: ${label.toLowerCase()}`,
      edits: changeProps(drawing, part, { [key]: value }),
    });
  return (
    <>
      <TextField
        label="Label"
        value={part.label ?? ""}
        placeholder="what people call it"
        onCommit={(label) => change(`Label ${id}`, { label: label || undefined })}
      />
      {Object.entries(kind.settings).map(([key, setting]) => (
        <SettingField
          key={key}
          setting={{ ...setting, label: words(setting.label), help: words(setting.help) }}
          given={part.props?.[key]}
          onCommit={(value) => set(key, setting.label, value)}
        />
      ))}
      {kind.rerate && (
        <FlagField
          label="Keep this rating"
          value={part.fixed?.includes("rating") ?? false}
          help="Size it then leaves it alone."
          onCommit={(isKept) => change(`Keeping the rating of ${id}`, { fixed: isKept ? KEPT_RATING : undefined })}
        />
      )}
    </>
  );
}
