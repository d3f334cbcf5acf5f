import type { CDPSession, Page } from "@playwright/test";
import type { Spot } from "./sheet.ts";

/** Steps a moving finger is seen in. */
const STEPS = 5;

/** Fingers on a touch screen. */
export class Fingers {
  readonly #page: Page;
  #session: CDPSession | null = null;

  constructor(page: Page) {
    this.#page = page;
  }

  async tap({ x, y }: Spot): Promise<void> {
    await this.#page.touchscreen.tap(x, y);
  }

  /** One finger from here to there. */
  async drag(from: Spot, to: Spot): Promise<void> {
    await this.#move([[from, to]]);
  }

  /** Two fingers, level with each other, that go from one distance to another about a spot. */
  async pinch(about: Spot, fromPx: number, toPx: number): Promise<void> {
    const at = (px: number): Spot => ({ x: about.x + px / 2, y: about.y });
    await this.#move([
      [at(-fromPx), at(-toPx)],
      [at(fromPx), at(toPx)],
    ]);
  }

  async #move(paths: readonly (readonly [from: Spot, to: Spot])[]): Promise<void> {
    const fingers = (share: number) =>
      paths.map(([from, to], id) => ({
        id,
        x: from.x + (to.x - from.x) * share,
        y: from.y + (to.y - from.y) * share,
      }));
    await this.#touch("touchStart", fingers(0));
    for (let step = 1; step <= STEPS; step += 1) await this.#touch("touchMove", fingers(step / STEPS));
    await this.#touch("touchEnd", []);
  }

  async #touch(type: "touchStart" | "touchMove" | "touchEnd", touchPoints: { id: number; x: number; y: number }[]) {
    this.#session ??= await this.#page.context().newCDPSession(this.#page);
    await this.#session.send("Input.dispatchTouchEvent", { type, touchPoints });
  }
}
