import { expect } from "./fixtures.ts";
import type { AppPage } from "./app-page.ts";
import { Keyboard } from "./keyboard.ts";

interface Place {
  readonly name: string;
  /** Nothing but words, with no colours that another place does not have. */
  readonly isOnlyWords?: true;
  readonly open: (app: AppPage) => Promise<void>;
}

/** Opens a dialog by its command and closes whatever was open before. */
const dialog = (title: string, command: string): Place => ({
  name: title,
  open: async (app) => {
    await app.letGo();
    await app.command(command);
    await expect(app.dialog(title)).toBeVisible();
  },
});

const instrument = (title: string): Place => ({
  name: title,
  open: async (app) => {
    await app.letGo();
    await app.page.getByRole("toolbar", { name: "Try out" }).getByRole("button", { name: title }).click();
    await expect(app.page.getByRole("region", { name: title })).toBeVisible();
  },
});

const card = (name: string, line: string): Place => ({
  name: `Card of a ${name}`,
  open: async (app) => {
    await app.letGo();
    await app.command("outline parts");
    await new Keyboard(app).walkTo(line);
    await app.command("card all about");
    await expect(app.card.getByRole("heading", { name: "Settings" })).toBeVisible();
  },
});

const helpPage = (title: string): Place => ({
  name: `Help: ${title}`,
  isOnlyWords: true,
  open: async (app) => {
    await app.dialog("Help").getByRole("button", { name: title, exact: true }).click();
    await expect(app.dialog("Help").getByRole("article", { name: title })).toBeVisible();
  },
});

/** Every place there is, in an order in which each can be opened after the one before; the demo is open. */
export const PLACES: readonly Place[] = [
  {
    name: "Snags of a demo",
    open: async (app) => {
      await app.command("snags what is wrong");
      await app.snag("Stop", /./).first().click();
      await expect(app.snags.getByText("Rule:")).toBeVisible();
    },
  },
  card("part", "K1"),
  card("wire", "wire W4"),
  instrument("Touch test"),
  instrument("Meter"),
  instrument("Drill"),
  dialog("Size it", "size it"),
  dialog("Find anything", "find anything"),
  dialog("Papers", "papers to print"),
  dialog("Bench", "bench"),
  dialog("Settings", "settings"),
  dialog("Drawings", "drawings kept"),
  dialog("Help", "help"),
  { name: "Help: Marks", open: helpPage("Marks").open },
  helpPage("Symbols and settings"),
  helpPage("Snags"),
  helpPage("Keys"),
  helpPage("How exact"),
  helpPage("Cautions"),
  dialog("Wire from", "draw a wire"),
  {
    name: "an empty sheet",
    open: async (app) => {
      await app.letGo();
      await app.newDrawing();
    },
  },
];
