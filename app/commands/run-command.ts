import type { Editor } from "../store/editor.ts";
import { pastePlan } from "./clipboard.ts";
import { whyNot, type Effect, type Plan } from "./command.ts";
import { findCommand } from "./index.ts";

/** What reaches beyond the editor's own state: files, the clipboard, the drawings kept. */
export interface Outside {
  writeClipboard(text: string): void;
  /** `null` when the browser refuses; it has been said. */
  readClipboard(): Promise<string | null>;
  newDrawing(): void;
  openFile(): void;
  saveFile(): void;
  copyDrawing(): void;
  openDemo(name: string): void;
  takeOver(): void;
}

/** Carries out commands and plans. */
export interface Runner {
  /** By id; a command that can't be done says why in the live region. */
  run(id: string): void;
  carryOut(plan: Plan): void;
  pasteText(text: string): void;
}

export function createRunner(editor: Editor, outside: Outside): Runner {
  const carryOut = (plan: Plan) => {
    if ("reason" in plan) return editor.say(plan.reason);
    if (plan.transaction) editor.dispatch(plan.transaction);
    if (plan.select) editor.select(plan.select);
    for (const one of plan.effects ?? []) carryOutEffect(one, editor, outside, pasteText);
    if (plan.say !== undefined) editor.say(plan.say);
  };
  const pasteText = (text: string) => carryOut(pastePlan(editor.state, text));
  return {
    carryOut,
    pasteText,
    run: (id) => {
      const command = findCommand(editor.state, id);
      if (command === undefined) return;
      const reason = whyNot(command, editor.state);
      carryOut(reason === null ? command.plan(editor.state) : { reason });
    },
  };
}

function carryOutEffect(effect: Effect, editor: Editor, outside: Outside, pasteText: (text: string) => void): void {
  switch (effect.do) {
    case "undo":
      return editor.undo();
    case "redo":
      return editor.redo();
    case "paste":
      return void outside.readClipboard().then((text) => text !== null && pasteText(text));
    case "clipboard":
      return outside.writeClipboard(effect.text);
    case "show":
      return editor.show(effect.place);
    case "view":
      return editor.set({ view: effect.view });
    case "reveal":
      return editor.set({ reveal: { places: effect.places } });
    case "spotlight":
      return editor.set({ spotlight: effect.places, chosenSnag: effect.snag });
    case "tool":
      return editor.set({ tool: effect.tool });
    case "placing":
      return editor.set({ placing: effect.placing, tool: effect.placing ? "place" : "select" });
    case "instrument":
      return editor.takeInstrument(effect.instrument);
    case "wire-from":
      return editor.set({ wireFrom: effect.terminal });
    case "flick":
      return editor.flick(effect.control);
    case "stand":
      return editor.stand(effect.positions);
    case "preferences":
      return editor.setPreferences(effect.change);
    case "new-drawing":
      return outside.newDrawing();
    case "open-file":
      return outside.openFile();
    case "save-file":
      return outside.saveFile();
    case "copy-drawing":
      return outside.copyDrawing();
    case "open-demo":
      return outside.openDemo(effect.name);
    case "take-over":
      return outside.takeOver();
  }
}
