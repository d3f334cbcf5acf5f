import type { Part } from "../../../core/document/index.ts";
import { useApp, useDrawing } from "../../app-context.tsx";
import { changeProps } from "../../commands/change-props.ts";
import { FlagField } from "../../fields/FlagField.tsx";
import { SettingField } from "../../fields/SettingField.tsx";
import { TextField } from "../../fields/TextField.tsx";
import { partName, viewOf } from "../../store/part-view.ts";
import { useWords } from "../../use-words.ts";
import { SymbolPicture } from "../SymbolPicture.tsx";
import { usePose } from "../use-pose.ts";
import { CardButtons } from "./CardButtons.tsx";
import { PartNow } from "./PartNow.tsx";
import { SnagsHere } from "./SnagsHere.tsx";
import { SwapKind } from "./SwapKind.tsx";
import { TerminalTable } from "./TerminalTable.tsx";

const MOST = { width: 96, height: 72 };

export function PartCard({ part }: { readonly part: Part }) {
  const { editor } = useApp();
  const drawing = useDrawing();
  const words = useWords();
  const view = viewOf(part);
  const pose = usePose(part.id);
  const settings = Object.entries(view.kind.settings);
  const set = (key: string, label: string, value: unknown) =>
    editor.dispatch({
      label: `${partName(part)}: ${label.toLowerCase()}`,
      edits: changeProps(drawing, part, { [key]: value }),
    });
  return (
    <>
      <header className="card-head">
        <span className="card-picture">
          <SymbolPicture view={view} pose={pose} most={MOST} />
        </span>
        <div>
          <h3 className="card-title">{partName(part)}</h3>
          <p className="card-kind">{words(view.kind.title)}</p>
        </div>
      </header>
      <CardButtons commands={["turn", "flip", "duplicate", "delete"]} />
      <PartNow part={part} />
      <SnagsHere places={[part.id, ...view.terminals.map((terminal) => `${part.id}.${terminal.name}`)]} />
      <h4>Settings</h4>
      <TextField
        label="Label"
        value={part.label ?? ""}
        placeholder="what people call it"
        onCommit={(label) => {
          editor.dispatch({
            label: `Label ${part.id.toUpperCase()}`,
            edits: [{ op: "set-part", id: part.id, change: { label: label || undefined } }],
          });
          return null;
        }}
      />
      {settings.map(([key, setting]) => (
        <SettingField
          key={key}
          setting={{ ...setting, label: words(setting.label), help: words(setting.help) }}
          given={part.props?.[key]}
          onCommit={(value) => set(key, setting.label, value)}
        />
      ))}
      {view.kind.rerate && (
        <FlagField
          label="Keep this rating"
          value={part.fixed?.includes("rating") ?? false}
          help="Size it then leaves it alone."
          onCommit={(isKept) =>
            editor.dispatch({
              label: `Keeping the rating of ${part.id.toUpperCase()}`,
              edits: [{ op: "set-part", id: part.id, change: { fixed: isKept ? ["rating"] : undefined } }],
            })
          }
        />
      )}
      <h4>Terminals</h4>
      <TerminalTable part={part} />
      <SwapKind part={part} />
      <p className="card-about">{words(view.kind.about)}</p>
    </>
  );
}
