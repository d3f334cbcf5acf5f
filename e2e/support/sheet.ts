import type { Document } from "../../core/document/index.ts";
import { pictureOf, type Picture } from "../../core/picture/index.ts";
import type { View } from "../../app/board/board-controller.ts";
import { viewOfAll, zoomedAt } from "../../app/board/zoom.ts";
import type { AppPage, BoardBox } from "./app-page.ts";

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/**
 * Where on the screen the things of the drawing lie, as an eye would see it. Good until the view or the drawing changes; `panned` and
 * `pinched` go along with the hand.
 */
export class Sheet {
  readonly #picture: Picture;
  readonly #view: View;

  /** `view` is in CSS pixels of the page. */
  private constructor(picture: Picture, view: View) {
    this.#picture = picture;
    this.#view = view;
  }

  /** Brings the whole drawing into view; from the saved file follows what is where. */
  static async look(app: AppPage): Promise<Sheet> {
    await app.page.keyboard.press("Control+0");
    return Sheet.inView(app, await app.saved());
  }

  /** A drawing known beforehand, wholly in view as it is when it has just been opened. */
  static async inView(app: AppPage, document: Document): Promise<Sheet> {
    const { x, y, width, height } = await app.boardBox();
    const picture = pictureOf(document);
    const view = viewOfAll(picture.box, { width: Math.round(width), height: Math.round(height) });
    return new Sheet(picture, { ...view, x: view.x + x, y: view.y + y });
  }

  /** The Board has another size or place on the page: what was in its middle stays there. */
  resized(before: BoardBox, after: BoardBox): Sheet {
    return this.panned(
      after.x + after.width / 2 - before.x - before.width / 2,
      after.y + after.height / 2 - before.y - before.height / 2,
    );
  }

  panned(dx: number, dy: number): Sheet {
    return new Sheet(this.#picture, { ...this.#view, x: this.#view.x + dx, y: this.#view.y + dy });
  }

  /** `factor` times nearer about a spot of the page. */
  pinched(factor: number, about: Spot): Sheet {
    return new Sheet(this.#picture, zoomedAt(this.#view, factor, about));
  }

  /** The spot of the screen over a spot of the sheet, in grid steps. */
  spot([x, y]: readonly [number, number]): Spot {
    return {
      x: this.#view.x + x * this.#view.scale,
      y: this.#view.y + y * this.#view.scale,
    };
  }

  terminal(address: string): Spot {
    const all = this.#picture.parts.flatMap((part) => part.terminals);
    const found = all.find((terminal) => terminal.address === address);
    if (found === undefined) {
      throw new Error(`Sheet: no terminal ${address}; there are ${all.map((one) => one.address).join(", ")}`);
    }
    return this.spot(found.at);
  }

  /** The middle of a part's symbol, or of a wire's longest run. */
  place(id: string): Spot {
    const box = this.#picture.parts.find((part) => part.id === id)?.box;
    if (box !== undefined) return this.spot([(box.left + box.right) / 2, (box.top + box.bottom) / 2]);
    const route = this.#picture.wires.find((wire) => wire.id === id)?.route;
    if (route === undefined) throw new Error(`Sheet: no part or wire ${id}`);
    const runs = route.slice(1).map((end, index) => [route[index]!, end] as const);
    const lengthOf = ([a, b]: (typeof runs)[number]) => Math.hypot(a[0] - b[0], a[1] - b[1]);
    const [start, end] = runs.toSorted((one, other) => lengthOf(other) - lengthOf(one))[0]!;
    return this.spot([(start[0] + end[0]) / 2, (start[1] + end[1]) / 2]);
  }
}
