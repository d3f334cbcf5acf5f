import type { AppPage } from "./app-page.ts";
import { Sheet, type Spot } from "./sheet.ts";

/** A person's hand with a mouse on the Board. */
export class BoardHand {
  readonly #app: AppPage;
  #sheet: Sheet | null = null;

  constructor(app: AppPage) {
    this.#app = app;
  }

  /** Brings the whole drawing into view; from then on its things can be pointed at. */
  async look(): Promise<void> {
    this.#sheet = await Sheet.look(this.#app);
  }

  get sheet(): Sheet {
    if (this.#sheet === null) throw new Error("BoardHand: look() first");
    return this.#sheet;
  }

  /** Turns the wheel over the middle of the Board; a positive turn goes farther off. */
  async wheel(turnPx: number): Promise<void> {
    const { x, y } = await this.#spotOnBoard(0.5, 0.5);
    await this.#app.page.mouse.move(x, y);
    await this.#app.page.mouse.wheel(0, turnPx);
  }

  /** Drags a part off the Shelf to a spot given as shares of the Board's width and height. */
  async drop(name: string, across: number, down: number): Promise<void> {
    const item = this.#app.shelf.getByRole("button", { name, exact: true });
    await item.scrollIntoViewIfNeeded();
    const box = await item.boundingBox();
    if (box === null) throw new Error(`BoardHand.drop: no ${name} on the Shelf`);
    await this.drag({ x: box.x + box.width / 2, y: box.y + box.height / 2 }, await this.#spotOnBoard(across, down));
  }

  /** Draws a wire from terminal to terminal. */
  async wire(from: string, to: string): Promise<void> {
    await this.drag(this.sheet.terminal(from), this.sheet.terminal(to));
  }

  /** Clicks a part or wire. */
  async select(id: string): Promise<void> {
    const { x, y } = this.sheet.place(id);
    await this.#app.page.mouse.click(x, y);
  }

  /** Draws a box around everything, which selects it. */
  async marquee(): Promise<void> {
    await this.drag(await this.#spotOnBoard(0.005, 0.99), await this.#spotOnBoard(0.995, 0.01));
  }

  async drag(from: Spot, to: Spot): Promise<void> {
    const { mouse } = this.#app.page;
    await mouse.move(from.x, from.y);
    await mouse.down();
    await mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2, { steps: 2 });
    await mouse.move(to.x, to.y, { steps: 2 });
    await mouse.up();
  }

  async #spotOnBoard(across: number, down: number): Promise<Spot> {
    const box = await this.#app.boardBox();
    return { x: box.x + box.width * across, y: box.y + box.height * down };
  }
}
