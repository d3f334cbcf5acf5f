import { useEffect, useRef } from "react";
import { splitAddress } from "../../core/document/index.ts";
import { useApp, useDrawing, useEditor } from "../app-context.tsx";
import { whyNot } from "../commands/command.ts";
import { findCommand } from "../commands/index.ts";
import { keysText } from "../commands/keys.ts";
import { IS_MAC } from "../is-mac.ts";
import type { BoardTarget, ScreenPoint } from "../board/board-controller.ts";
import type { EditorState } from "../store/editor-state.ts";
import { placeName } from "../store/part-view.ts";

const MENUS: Readonly<Record<BoardTarget["type"], readonly string[]>> = {
  part: ["flick", "turn", "flip", "duplicate", "cut", "copy", "delete", "show card"],
  wire: ["delete", "show card"],
  terminal: ["wire", "show card"],
  sheet: ["paste", "note", "select-all", "fit", "tidy", "show shelf"],
};

/** What can be done with the thing under the pointer. */
export function BoardMenu() {
  const menu = useEditor((state) => state.menu);
  return menu === null ? null : <OpenMenu key={`${menu.at.x} ${menu.at.y}`} at={menu.at} target={menu.target} />;
}

function OpenMenu({ at, target }: NonNullable<EditorState["menu"]>) {
  const { editor, runner } = useApp();
  const drawing = useDrawing();
  const popover = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const shown = popover.current!;
    if (target.type === "terminal")
      editor.set({ wireFrom: target.id, selection: new Set([splitAddress(target.id)[0]]) });
    else if (target.id !== "" && !editor.state.selection.has(target.id)) editor.select([target.id]);
    shown.showPopover();
    placeAt(shown, at);
    shown.querySelector<HTMLElement>("button")?.focus();
  }, [editor, at, target]);
  const close = () => editor.set({ menu: null });
  return (
    <div
      ref={popover}
      popover="auto"
      className="board-menu"
      role="menu"
      tabIndex={-1}
      aria-label={target.id === "" ? "The sheet" : placeName(drawing, target.id)}
      onToggle={(event) => event.newState === "closed" && close()}
      onKeyDown={(event) => {
        const step = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
        if (step === 0) return;
        event.preventDefault();
        const buttons = [...event.currentTarget.querySelectorAll<HTMLElement>("button")];
        const now = buttons.indexOf(document.activeElement as HTMLElement);
        buttons[(now + step + buttons.length) % buttons.length]?.focus();
      }}
    >
      {MENUS[target.type].map((id) => (
        <MenuItem key={id} id={id} onDone={() => (runner.run(id), close())} />
      ))}
    </div>
  );
}

/** At the pointer, which is told from the Board's corner, but never past the window's edges. */
function placeAt(menu: HTMLElement, at: ScreenPoint): void {
  const board = document.querySelector(".board")!.getBoundingClientRect();
  menu.style.left = `${Math.max(0, Math.min(board.left + at.x, innerWidth - menu.offsetWidth))}px`;
  menu.style.top = `${Math.max(0, Math.min(board.top + at.y, innerHeight - menu.offsetHeight))}px`;
}

/** Here only what can be done is listed; the command box has the rest and why it can't. */
function MenuItem({ id, onDone }: { readonly id: string; readonly onDone: () => void }) {
  const command = useEditor((state) => findCommand(state, id));
  const reason = useEditor((state) => (command === undefined ? "" : whyNot(command, state)));
  if (command === undefined || reason !== null) return null;
  return (
    <button type="button" role="menuitem" onClick={onDone}>
      <span>{command.title}</span>
      {command.keys?.[0] && <kbd>{keysText(command.keys[0], IS_MAC)}</kbd>}
    </button>
  );
}
