import { readFileSync } from "node:fs";
import type { Download, Locator, Page } from "@playwright/test";
import { readCircuitFile } from "../../core/file/index.ts";
import type { Document } from "../../core/document/index.ts";
import { expect } from "./fixtures.ts";

/** CSS pixels of the page. */
export interface BoardBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The places on the screen, and what a person does with them. Everything is found by its role and name. */
export class AppPage {
  readonly page: Page;
  readonly shelf: Locator;
  readonly outline: Locator;
  readonly controls: Locator;
  readonly snags: Locator;
  readonly card: Locator;
  /** What those who hear the page were told last. */
  readonly said: Locator;

  constructor(page: Page) {
    this.page = page;
    // From here on the browser leaves file dialogs to the tests; told only when one is due, it may be told too late.
    page.on("filechooser", () => undefined);
    this.shelf = page.getByRole("region", { name: "Shelf" });
    this.outline = page.getByRole("region", { name: "Outline of the drawing" });
    this.controls = page.getByRole("region", { name: "Controls" });
    this.snags = page.getByRole("region", { name: "Snags", exact: true });
    this.card = page.getByRole("region", { name: "Card", exact: true });
    this.said = page.getByRole("status").last();
  }

  /** Opens the app with the first demo, another one, or the drawing that was open last. */
  async open(search = ""): Promise<void> {
    await this.page.goto(`./${search}`);
    await this.canvas.waitFor();
    // The title bears the drawing's name as soon as the app listens to keys.
    await expect(this.page).toHaveTitle(/ · Groundstrap$/);
  }

  async openEmpty(): Promise<void> {
    await this.open();
    await this.newDrawing();
  }

  async newDrawing(): Promise<void> {
    await this.page.keyboard.press("Alt+n");
    await expect(this.drawingName).toContainText("Untitled drawing");
    await expect(this.outline).toContainText("The drawing is empty");
  }

  /** The Board's picture: hidden from those who hear the page, who have the outline. */
  get canvas(): Locator {
    return this.page.locator(".board canvas");
  }

  /** Where the Board lies on the page. */
  async boardBox(): Promise<BoardBox> {
    const box = await this.page.locator(".board").boundingBox();
    if (box === null) throw new Error("boardBox: no Board on the page");
    return box;
  }

  /** The button with the drawing's title and how it is kept. */
  get drawingName(): Locator {
    return this.page.getByRole("banner").getByTitle("Drawings");
  }

  get undo(): Locator {
    return this.page.getByRole("button", { name: /^Undo/ });
  }

  get redo(): Locator {
    return this.page.getByRole("button", { name: /^Redo/ });
  }

  dialog(name: string): Locator {
    return this.page.getByRole("dialog", { name });
  }

  /** Puts everything down and closes what lies over the page. */
  async letGo(): Promise<void> {
    await this.page.keyboard.press("Escape");
    // By element, not by role: a closed one still has the focus until it is gone.
    await expect(this.page.locator("dialog")).toHaveCount(0);
  }

  /** Runs a command by typing some of its words into the command box. */
  async command(words: string): Promise<void> {
    await this.page.keyboard.press("Control+k");
    await this.page.keyboard.type(words);
    await this.page.keyboard.press("Enter");
  }

  /** Presses a part on the Shelf, which puts it on a free spot. */
  async add(name: string): Promise<void> {
    await this.shelf.getByRole("button", { name, exact: true }).click();
  }

  outlineItem(text: string | RegExp): Locator {
    return this.outline.getByRole("treeitem", { name: text });
  }

  snag(level: "Stop" | "Put right" | "Advice" | "Can't check", text: RegExp): Locator {
    return this.snags
      .getByRole("listitem")
      .getByRole("button", { name: new RegExp(`^${level}`) })
      .filter({ hasText: text });
  }

  /** Types a value into a field of the Card and leaves it. */
  async fill(label: string | RegExp, value: string): Promise<void> {
    const field = this.card.getByLabel(label, { exact: true });
    await field.fill(value);
    await field.press("Enter");
  }

  /** A value of the Card's list of what the thing is doing now, as a number in its unit: "12.1 V" is 12.1, "45 mA" is 0.045. */
  async reading(name: string): Promise<number> {
    const shown = this.card.getByRole("term").filter({ hasText: new RegExp(`^${name}$`) });
    const text = await shown.locator("xpath=following-sibling::dd").innerText();
    const match = /^(-?[\d.]+) (m?)[VAW]/.exec(text);
    if (match === null) throw new Error(`reading "${name}": got "${text}", wanted a number of V, A or W`);
    return Number(match[1]) * (match[2] === "m" ? 1e-3 : 1);
  }

  /** What the program writes to a file, as the person gets it. */
  async saved(): Promise<Document> {
    const [download] = await Promise.all([this.page.waitForEvent("download"), this.page.keyboard.press("Control+s")]);
    const read = readCircuitFile(await textOf(download));
    if ("error" in read) throw new Error(`saved(): the app wrote a file it would refuse: ${read.error}`);
    return read.document;
  }

  /** Lets the person's answer to the file dialog be this file. */
  async openFile(file: { readonly name: string; readonly text: string | Uint8Array }): Promise<void> {
    const [chooser] = await Promise.all([this.page.waitForEvent("filechooser"), this.page.keyboard.press("Control+o")]);
    await chooser.setFiles({ name: file.name, mimeType: "", buffer: Buffer.from(file.text) });
  }
}

export async function textOf(download: Download): Promise<string> {
  return readFileSync(await download.path(), "utf8");
}
