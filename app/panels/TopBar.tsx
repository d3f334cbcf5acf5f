import { useApp, useDrawing, useEditor } from "../app-context.tsx";
import { whyNot } from "../commands/command.ts";
import { findCommand } from "../commands/index.ts";
import { keysText } from "../commands/keys.ts";
import { IS_MAC } from "../is-mac.ts";
import { titleOf } from "../keeping/drawing-shelf.ts";
import type { EditorState } from "../store/editor-state.ts";
import { Glyph, type GlyphName } from "./Glyph.tsx";

/** The drawing's name, how it is kept, and the way to everything else. */
export function TopBar() {
  const { runner } = useApp();
  const title = titleOf(useDrawing());
  const kept = useEditor(keptWords);
  return (
    <header className="top-bar">
      <h1 className="brand">
        <Glyph name="strap" />
        <span>Groundstrap</span>
      </h1>
      <button type="button" className="drawing-name" title="Drawings" onClick={() => runner.run("show drawings")}>
        <span className="drawing-name-title">{title}</span>
        <span className="drawing-name-kept">{kept}</span>
      </button>
      <button type="button" className="find-anything" onClick={() => runner.run("show command-box")}>
        <Glyph name="find" />
        <span>Find anything to do</span>
        <kbd>{keysText("Mod+K", IS_MAC)}</kbd>
      </button>
      <div className="top-buttons">
        <TopButton command="undo" glyph="undo" />
        <TopButton command="redo" glyph="redo" />
        <TopButton command="show papers" glyph="paper" label="Papers" />
        <TopButton command="show help" glyph="help" label="Help" />
        <TopButton command="show settings" glyph="settings" label="Settings" />
      </div>
    </header>
  );
}

function keptWords({ keeping, access, save }: EditorState): string {
  if (access === "looking") return "only looking";
  switch (keeping.status) {
    case "kept":
      return save === 0 ? "not changed yet" : "kept in this browser";
    case "waiting":
      return "keeping…";
    case "refused":
      return "NOT kept: save to a file";
    case "conflict":
      return "NOT kept: changed in another tab";
  }
}

function TopButton({
  command,
  glyph,
  label,
}: {
  readonly command: string;
  readonly glyph: GlyphName;
  readonly label?: string;
}) {
  const { runner } = useApp();
  const reason = useEditor((state) => whyNot(findCommand(state, command)!, state));
  const step = useEditor((state) =>
    command === "undo"
      ? state.history.past.at(-1)?.label
      : command === "redo"
        ? state.history.future.at(-1)?.label
        : undefined,
  );
  const title = useEditor((state) => findCommand(state, command)!.title);
  const name = label ?? (step === undefined ? title : `${title}: ${step}`);
  return (
    <button
      type="button"
      className="top-button"
      aria-label={name}
      title={reason ?? name}
      aria-disabled={reason !== null}
      onClick={() => runner.run(command)}
    >
      <Glyph name={glyph} />
      {label && <span className="top-button-label">{label}</span>}
    </button>
  );
}
