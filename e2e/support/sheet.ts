import type { Document } from "../../core/document/index.ts";
import { pictureOf, type Picture } from "../../core/picture/index.ts";
import type { View } from "../../app/board/board-controller.ts";
import { viewOfAll } from "../../app/board/zoom.ts";
import type { AppPage } from "./app-page.ts";

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/**
 * Where on the screen the things of the drawing lie, as an eye would see it: the whole drawing is brought into view, and from the
 * saved file follows what is where. Good until the view moves.
 */
export class Sheet {
  readonly #picture: Picture;
  readonly #view: View;
  readonly #corner: Spot;

  private constructor(document: Document, board: Spot & { readonly width: number; readonly height: number }) {
    this.#picture = pictureOf(document);
    this.#view = viewOfAll(this.#picture.box, { width: Math.round(board.width), height: Math.round(board.height) });
    this.#corner = board;
  }

  /** Brings the whole drawing into view and looks at it. */
  static async look(app: AppPage): Promise<Sheet> {
    await app.page.keyboard.press("Control+0");
    const box = await app.page.locator(".board").boundingBox();
    if (box === null) throw new Error("Sheet.look: no Board on the page");
    return new Sheet(await app.saved(), box);
  }

  /** The spot of the screen over a spot of the sheet, in grid steps. */
  spot([x, y]: readonly [number, number]): Spot {
    return {
      x: this.#corner.x + this.#view.x + x * this.#view.scale,
      y: this.#corner.y + this.#view.y + y * this.#view.scale,
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
