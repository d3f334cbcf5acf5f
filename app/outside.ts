import type { Outside } from "./commands/run-command.ts";
import { writeCircuitFile } from "../core/file/index.ts";
import { titleOf } from "./keeping/drawing-shelf.ts";
import { fileName, pickFile, readDrawing, saveFile } from "./keeping/files.ts";
import type { Keeper } from "./keeping/keeper.ts";
import { documentOf } from "./store/editor-state.ts";
import type { Editor } from "./store/editor.ts";

/** Files, the clipboard and the drawings kept, for commands. */
export function browserOutside(editor: Editor, keeper: Keeper): Outside {
  const trouble = (text: string) => editor.notify({ about: "open", tone: "trouble", text });
  return {
    writeClipboard: (text) => {
      navigator.clipboard.writeText(text).then(
        () => editor.say("Copied"),
        () => trouble("The browser did not let the clipboard be written."),
      );
    },
    readClipboard: () =>
      navigator.clipboard.readText().catch(() => {
        trouble("The browser does not hand over the clipboard here. Press the paste keys instead.");
        return null;
      }),
    newDrawing: () => void keeper.newDrawing(),
    openFile: () => void pickFile().then((file) => file && openFile(editor, keeper, file)),
    saveFile: () => void saveDrawing(editor, keeper),
    copyDrawing: () => void keeper.copyDrawing(),
    openDemo: (name) => void keeper.openDemo(name),
    takeOver: () => void keeper.takeOver(),
  };
}

/** Opens a file as a new drawing. A bad one is refused with the reason, and what is open stays. */
export async function openFile(editor: Editor, keeper: Keeper, file: File): Promise<void> {
  const read = await readDrawing(file);
  if ("error" in read) return editor.notify({ about: "open", tone: "trouble", text: read.error });
  await keeper.openNew(read.document, { keepNow: true });
  editor.dismiss("open");
  editor.say(`Opened ${file.name}`);
}

async function saveDrawing(editor: Editor, keeper: Keeper): Promise<void> {
  const document = documentOf(editor.state);
  const name = fileName(titleOf(document), "json");
  if (!(await saveFile({ name, media: "application/json", text: writeCircuitFile(document) }, editor.state.drawingId)))
    return;
  await keeper.savedToFile();
  editor.say(`Saved to ${name}`);
}
