import { splitAddress } from "../../core/document/index.ts";
import { type Box, growBox, unionBox } from "../../core/geometry/index.ts";
import type { Pose } from "../../core/parts/index.ts";
import { type Picture, pictureOf } from "../../core/picture/index.ts";
import type { BoardController, BoardSnapshot, View } from "./board-controller.ts";
import { type BoardOverlay, NO_OVERLAY } from "./board-overlay.ts";
import { Painter } from "./paint/painter.ts";
import type { MakeCanvas } from "./paint/tiles.ts";
import type { Palette } from "./palette.ts";
import { placeOnSheet } from "./place-on-sheet.ts";
import { posesOf } from "./poses.ts";
import type { BoardEvent } from "./tools/board-event.ts";
import { tools } from "./tools/index.ts";
import type { Act, Cursor, Sheet } from "./tools/tool.ts";
import { type Size, viewOfAll, viewOfPlace } from "./zoom.ts";

/** What the host needs of the page. */
export interface HostPage {
  /** Asks for `paint` to be called before the next frame is shown. */
  requestPaint(): void;
  setCursor(cursor: Cursor): void;
  readPalette(): Palette;
  readonly makeCanvas: MakeCanvas;
}

/** Members of a snapshot that the painting shows. */
const SHOWN = [
  "document",
  "selection",
  "view",
  "marks",
  "theme",
  "placing",
  "leads",
  "lettering",
  "spotlight",
  "tool",
] as const;

/**
 * Keeps the Board in step with the app: takes in snapshots, runs the gestures of the tool in hand, and paints when something
 * shown has changed and only then. Knows neither React nor Konva.
 */
export class BoardHost {
  readonly painter: Painter;
  private readonly controller: BoardController;
  private readonly page: HostPage;
  private shown: BoardSnapshot | null = null;
  private picture: Picture | null = null;
  /** What `picture` was worked out from. */
  private pictured: BoardSnapshot["document"] | null = null;
  private posed: ReadonlyMap<string, Pose> | null = null;
  private poses: ReadonlyMap<string, Pose> = new Map();
  private palette: Palette;
  private size: Size = { width: 0, height: 0 };
  private pixelRatio = 1;
  private overlay: BoardOverlay = NO_OVERLAY;
  private toolState: unknown = tools.select.start;

  constructor(controller: BoardController, page: HostPage) {
    this.controller = controller;
    this.page = page;
    this.painter = new Painter(page.makeCanvas);
    this.palette = page.readPalette();
  }

  /** Starts listening to the app; the returned function stops it. */
  start(): () => void {
    this.takeIn();
    return this.controller.subscribe(() => this.takeIn());
  }

  get view(): View {
    return this.controller.getSnapshot().view;
  }

  setView(view: View): void {
    this.controller.setView(view);
  }

  /** CSS pixels, and device pixels per CSS pixel. */
  resize(size: Size, pixelRatio: number): void {
    if (size.width === this.size.width && size.height === this.size.height && pixelRatio === this.pixelRatio) return;
    const isFirst = this.size.width === 0;
    this.size = size;
    this.pixelRatio = pixelRatio;
    this.painter.invalidate();
    this.controller.setSize(size.width, size.height);
    if (isFirst) this.reveal(this.controller.getSnapshot());
    this.page.requestPaint();
  }

  /** What was drawn can't be kept: the typeface arrived late, or the browser took a canvas's pixels away and gave it back empty. */
  redraw(): void {
    this.painter.clear();
    this.page.requestPaint();
  }

  /** Offers a key to a gesture in progress; whether it was meant for that. */
  key(key: string): boolean {
    const { tool, placing } = this.controller.getSnapshot();
    const isBusy = this.toolState !== tools[tool].start || placing !== null;
    const isMeant =
      isBusy && (key === "Escape" || key === "Backspace" || (placing !== null && (key === "r" || key === "f")));
    if (isMeant) this.handle({ type: "key", key });
    return isMeant;
  }

  /** Runs an event through the tool in hand. */
  handle(event: BoardEvent): void {
    const snapshot = this.controller.getSnapshot();
    const step = tools[snapshot.tool].step(this.toolState, event, this.sheetOf(snapshot));
    this.toolState = step.state;
    const isSame = step.overlay === this.overlay;
    this.overlay = step.overlay;
    this.page.setCursor(step.cursor);
    for (const act of step.acts) this.perform(act);
    if (!isSame) this.page.requestPaint();
  }

  paint(context: CanvasRenderingContext2D): void {
    const { width, height } = this.size;
    if (width === 0 || height === 0) return;
    const snapshot = this.controller.getSnapshot();
    const { view, marks, revision, lettering, selection, spotlight, leads } = snapshot;
    const frame = {
      view,
      marks,
      revision,
      lettering,
      selection,
      spotlight,
      leads,
      picture: this.pictureFor(snapshot),
      width,
      height,
      pixelRatio: this.pixelRatio,
      palette: this.palette,
      overlay: this.overlay,
    };
    if (this.painter.paint(context, frame)) this.page.requestPaint();
  }

  private takeIn(): void {
    const snapshot = this.controller.getSnapshot();
    const before = this.shown;
    if (before !== null && before.theme === snapshot.theme && SHOWN.every((key) => before[key] === snapshot[key])) {
      if (before.reveal !== snapshot.reveal) this.reveal(snapshot);
      this.shown = snapshot;
      return;
    }
    this.shown = snapshot;
    if (before?.theme !== snapshot.theme) this.palette = this.page.readPalette();
    if (before?.tool !== snapshot.tool) this.changeTool(snapshot);
    if (before?.reveal !== snapshot.reveal) this.reveal(snapshot);
    this.page.requestPaint();
  }

  private changeTool(snapshot: BoardSnapshot): void {
    this.toolState = tools[snapshot.tool].start;
    this.overlay = NO_OVERLAY;
  }

  /** The picture of a snapshot's document; what the last one has and still holds is taken over. */
  private pictureFor({ document, marks, revision }: BoardSnapshot): Picture {
    if (marks !== null && marks.revision === revision) this.poses = posesOf(marks, document, this.poses);
    if (this.picture !== null && this.pictured === document && this.posed === this.poses) return this.picture;
    this.picture = pictureOf(document, this.poses, this.picture ?? undefined);
    this.pictured = document;
    this.posed = this.poses;
    return this.picture;
  }

  private sheetOf(snapshot: BoardSnapshot): Sheet {
    const { document, selection, view, placing } = snapshot;
    this.pictureInScene(snapshot);
    return { document, selection, view, placing, scene: this.painter.scene };
  }

  /** Gestures between two frames must see the drawing as it is now, not as it was last painted. */
  private pictureInScene(snapshot: BoardSnapshot): void {
    this.painter.takePictureIn(this.pictureFor(snapshot));
  }

  private reveal(snapshot: BoardSnapshot): void {
    const { reveal, view } = snapshot;
    if (reveal === null || this.size.width === 0) return;
    this.pictureInScene(snapshot);
    if (reveal.places.length === 0) return this.controller.setView(viewOfAll(this.pictureFor(snapshot).box, this.size));
    const boxes = reveal.places.map((place) => this.boxOf(place)).filter((box) => box !== null);
    if (boxes.length > 0) this.controller.setView(viewOfPlace(view, boxes.reduce(unionBox), this.size));
  }

  private boxOf(place: string): Box | null {
    const { scene } = this.painter;
    const item = scene.parts.get(splitAddress(place)[0]) ?? scene.wires.get(place);
    if (item !== null) return item.extent;
    const at = placeOnSheet(place, scene);
    return at === null ? null : growBox({ left: at[0], top: at[1], right: at[0], bottom: at[1] }, 1);
  }

  private perform(act: Act): void {
    const { controller } = this;
    switch (act.act) {
      case "dispatch":
        return controller.dispatch(act.transaction);
      case "select":
        return controller.select(act.ids);
      case "view":
        return controller.setView(act.view);
      case "tool":
        return controller.setTool(act.tool);
      case "placing":
        return controller.setPlacing(act.placing);
      case "flick":
        return controller.flick(act.controlId);
      case "release":
        return controller.release(act.controlId);
      case "menu":
        return controller.openMenu(act.at, act.target);
      case "probe":
        return controller.probe(act.target);
    }
  }
}
