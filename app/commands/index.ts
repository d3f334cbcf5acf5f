import type { EditorState } from "../store/editor-state.ts";
import { addCommands } from "./add-commands.ts";
import { arrangeCommands } from "./arrange-commands.ts";
import type { Command } from "./command.ts";
import { drawingCommands } from "./drawing-commands.ts";
import { editCommands } from "./edit-commands.ts";
import { lookCommands } from "./look-commands.ts";
import { operateCommands, operateCommandsFor } from "./operate-commands.ts";
import { placeCommands } from "./place-commands.ts";
import { snagCommands } from "./snag-commands.ts";
import { tryOutCommands } from "./try-out-commands.ts";

/** Every command that does not hang on what is in the drawing. */
export const COMMANDS: readonly Command[] = [
  ...placeCommands,
  ...drawingCommands,
  ...editCommands,
  ...arrangeCommands,
  ...addCommands,
  ...operateCommands,
  ...snagCommands,
  ...tryOutCommands,
  ...lookCommands,
];

const byId: ReadonlyMap<string, Command> = new Map(COMMANDS.map((command) => [command.id, command]));

/** Every command there is now: the fixed ones and those of the drawing's own controls and situations. */
export function commandsFor(state: EditorState): readonly Command[] {
  return [...COMMANDS, ...operateCommandsFor(state)];
}

/** The command of that id; `undefined` when the drawing no longer has what it operates. */
export function findCommand(state: EditorState, id: string): Command | undefined {
  return byId.get(id) ?? operateCommandsFor(state).find((command) => command.id === id);
}
