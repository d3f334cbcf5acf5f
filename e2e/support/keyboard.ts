import type { AppPage } from "./app-page.ts";
import { expect } from "./fixtures.ts";

/** More stops than any place has; going on for longer means the thing can't be reached. */
const MOST_STOPS = 80;

/** A person at the keyboard who never touches a pointer. */
export class Keyboard {
  readonly #app: AppPage;

  constructor(app: AppPage) {
    this.#app = app;
  }

  async press(...keys: readonly string[]): Promise<void> {
    for (const key of keys) await this.#app.page.keyboard.press(key);
  }

  async type(text: string): Promise<void> {
    await this.#app.page.keyboard.type(text);
  }

  /** Tabs on until the focus is on the field, button or control of this name. */
  async tabTo(name: string | RegExp): Promise<void> {
    const { page } = this.#app;
    const named = { name, exact: true };
    const wanted = page
      .getByLabel(name, { exact: true })
      .or(page.getByRole("button", named))
      .or(page.getByRole("switch", named));
    const isThere = () => wanted.evaluateAll((all) => all.some((one) => one === document.activeElement));
    for (let stops = 0; !(await isThere()); stops += 1) {
      if (stops === MOST_STOPS) throw new Error(`tabTo: no stop named ${name}`);
      await this.press("Tab");
    }
  }

  /** Puts a value into the field of this name. */
  async fill(name: string | RegExp, value: string): Promise<void> {
    await this.tabTo(name);
    await this.press("Control+a");
    await this.type(value);
    await this.press("Enter");
  }

  /** Adds a part from the Shelf, whose search has the focus. */
  async take(words: string): Promise<void> {
    await this.press("Control+a");
    await this.type(words);
    await this.press("Enter");
  }

  /** Draws a wire by naming its two terminals: "k1.87a". */
  async wire(from: string, to: string): Promise<void> {
    await this.press("w");
    for (const [title, address] of [
      ["Wire from", from],
      ["Wire to", to],
    ] as const) {
      await expect(this.#app.dialog(title)).toBeVisible();
      await this.type(`${address.replace(".", " ")}:`);
      await this.press("Enter");
    }
    await expect(this.#app.dialog("Wire to")).toBeHidden();
  }

  /** Walks the outline to the line that starts so, which selects it. */
  async walkTo(start: string): Promise<void> {
    const line = this.#app.outline.getByRole("treeitem", { name: new RegExp(`^\\W*${start}\\b`) });
    const isThere = async () => (await line.getAttribute("aria-selected")) === "true";
    await this.press("o", "Home");
    for (let stops = 0; !(await isThere()); stops += 1) {
      if (stops === MOST_STOPS) throw new Error(`walkTo: no line that starts with ${start}`);
      await this.press("ArrowDown");
    }
  }
}
