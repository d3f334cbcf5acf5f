import type { ScreenPoint } from "./board-controller.ts";
import type { BoardHost } from "./board-host.ts";
import { navigate, type NavigationEvent, type NavigationState, STILL } from "./navigation.ts";
import type { PointerStep } from "./tools/board-event.ts";

/** How long a pointer rests in place before that means something of its own. */
const HOLD_MS = 500;
/** How far it may tremble meanwhile. CSS pixels. */
const TREMBLE_PX = 9;

/** Turns the browser's events on an element into the Board's own; the returned function stops it. */
export function listenOn(element: HTMLElement, host: BoardHost, isPlacingDragged: () => boolean): () => void {
  const input = new BoardInput(element, host, isPlacingDragged);
  const stop = new AbortController();
  const { signal } = stop;
  element.addEventListener("pointerdown", (event) => input.down(event), { signal });
  element.addEventListener("pointermove", (event) => input.move(event), { signal });
  element.addEventListener("pointerup", (event) => input.up(event), { signal });
  element.addEventListener("pointercancel", (event) => input.cancel(event), { signal });
  element.addEventListener("pointerleave", (event) => input.leave(event), { signal });
  element.addEventListener("contextmenu", (event) => input.menu(event), { signal });
  element.addEventListener("wheel", (event) => input.wheel(event), { signal, passive: false });
  window.addEventListener("keydown", (event) => input.key(event, true), { signal, capture: true });
  window.addEventListener("keyup", (event) => input.key(event, false), { signal, capture: true });
  // A part dragged off the Shelf: its pointer went down elsewhere and may be captured there.
  window.addEventListener("pointermove", (event) => input.moveAnywhere(event), { signal, capture: true });
  window.addEventListener("pointerup", (event) => input.upAnywhere(event), { signal, capture: true });
  window.addEventListener("blur", () => input.lostFocus(), { signal });
  return () => {
    input.stopHolding();
    stop.abort();
  };
}

class BoardInput {
  private readonly element: HTMLElement;
  private readonly host: BoardHost;
  private readonly isPlacingDragged: () => boolean;
  private navigation: NavigationState = STILL;
  /** The pointer whose gesture the tool is following. */
  private active: number | null = null;
  private isTouch = false;
  private isOver = false;
  private holding: { readonly timer: number; readonly from: ScreenPoint } | null = null;

  constructor(element: HTMLElement, host: BoardHost, isPlacingDragged: () => boolean) {
    this.element = element;
    this.host = host;
    this.isPlacingDragged = isPlacingDragged;
  }

  down(event: PointerEvent): void {
    this.isTouch = event.pointerType === "touch";
    const screen = this.screenOf(event);
    const isMiddle = event.button === 1;
    if (isMiddle) event.preventDefault();
    if (this.navigated({ type: "down", pointerId: event.pointerId, screen, isTouch: this.isTouch, isMiddle })) {
      this.giveUp();
      this.element.setPointerCapture(event.pointerId);
      return;
    }
    if (event.button !== 0 || this.active !== null) return;
    this.element.setPointerCapture(event.pointerId);
    this.active = event.pointerId;
    this.startHolding(event, screen);
    this.host.handle(this.stepOf("down", event));
  }

  move(event: PointerEvent): void {
    this.isOver = true;
    const screen = this.screenOf(event);
    const isTouch = event.pointerType === "touch";
    if (this.navigated({ type: "move", pointerId: event.pointerId, screen, isTouch, isMiddle: false })) return;
    if (this.active !== null && this.active !== event.pointerId) return;
    if (this.isPlacingDragged()) return;
    this.stopHoldingIfMoved(screen);
    this.host.handle(this.stepOf("move", event));
  }

  up(event: PointerEvent): void {
    this.stopHolding();
    if (this.navigated({ type: "up", pointerId: event.pointerId })) return;
    if (this.active !== event.pointerId) return;
    this.active = null;
    this.host.handle(this.stepOf("up", event));
  }

  cancel(event: PointerEvent): void {
    this.navigated({ type: "up", pointerId: event.pointerId });
    if (this.active === event.pointerId) this.giveUp();
  }

  leave(event: PointerEvent): void {
    this.isOver = false;
    if (this.active === null && event.pointerType !== "touch") this.host.handle(this.stepOf("leave", event));
  }

  menu(event: MouseEvent): void {
    event.preventDefault();
    // A finger's long press is told by the hold; the browser's own menu event for it would come twice.
    if (this.isTouch) return;
    this.active = null;
    this.stopHolding();
    this.host.handle(this.stepOf("menu", event));
  }

  wheel(event: WheelEvent): void {
    event.preventDefault();
    const linePx = event.deltaMode === WheelEvent.DOM_DELTA_PIXEL ? 1 : 33;
    // A pinch on a touchpad comes as small turns with Ctrl.
    const turn = event.deltaY * linePx * (event.ctrlKey ? 8 : 1);
    this.navigated({ type: "wheel", screen: this.screenOf(event), turn });
  }

  key(event: KeyboardEvent, isDown: boolean): void {
    if (event.key === " " && (this.isOver || !isDown) && !isTyping(event.target) && !isPressable(event.target)) {
      this.navigated({ type: "space", isDown });
      if (isDown && this.isOver) event.preventDefault();
      return;
    }
    if (!isDown || event.ctrlKey || event.metaKey || event.altKey || isTyping(event.target)) return;
    if (this.host.key(event.key.length === 1 ? event.key.toLowerCase() : event.key)) {
      event.preventDefault();
      event.stopPropagation();
    }
  }

  moveAnywhere(event: PointerEvent): void {
    if (!this.isPlacingDragged()) return;
    this.host.handle(this.stepOf(this.isInside(event) ? "move" : "leave", event));
  }

  upAnywhere(event: PointerEvent): void {
    if (!this.isPlacingDragged()) return;
    if (this.isInside(event)) this.host.handle(this.stepOf("up", event));
    else this.giveUp();
  }

  lostFocus(): void {
    this.navigation = STILL;
    if (this.active !== null) this.giveUp();
  }

  stopHolding(): void {
    if (this.holding !== null) window.clearTimeout(this.holding.timer);
    this.holding = null;
  }

  private startHolding(event: PointerEvent, from: ScreenPoint): void {
    const step = this.stepOf("hold", event);
    this.holding = { from, timer: window.setTimeout(() => this.host.handle(step), HOLD_MS) };
  }

  private stopHoldingIfMoved({ x, y }: ScreenPoint): void {
    if (this.holding !== null && Math.hypot(x - this.holding.from.x, y - this.holding.from.y) > TREMBLE_PX)
      this.stopHolding();
  }

  private giveUp(): void {
    this.stopHolding();
    this.active = null;
    this.host.handle({ type: "cancel" });
  }

  private navigated(event: NavigationEvent): boolean {
    const { view } = this.host;
    const step = navigate(this.navigation, view, event);
    this.navigation = step.state;
    if (step.view !== view) this.host.setView(step.view);
    return step.isTaken;
  }

  private stepOf(type: PointerStep["type"], event: MouseEvent): PointerStep {
    const screen = this.screenOf(event);
    const { view } = this.host;
    return {
      type,
      screen,
      at: [(screen.x - view.x) / view.scale, (screen.y - view.y) / view.scale],
      isTouch: event instanceof PointerEvent && event.pointerType === "touch",
      isAdding: event.shiftKey || event.ctrlKey || event.metaKey,
    };
  }

  private screenOf(event: MouseEvent): ScreenPoint {
    const { left, top } = this.element.getBoundingClientRect();
    return { x: event.clientX - left, y: event.clientY - top };
  }

  private isInside(event: PointerEvent): boolean {
    const { left, top, right, bottom } = this.element.getBoundingClientRect();
    const isWithin = event.clientX >= left && event.clientX < right && event.clientY >= top && event.clientY < bottom;
    // Panels may lie over the Board: letting go over one of them is no placing.
    const under = isWithin ? document.elementFromPoint(event.clientX, event.clientY) : null;
    return under !== null && this.element.contains(under);
  }
}

function isTyping(target: EventTarget | null): boolean {
  return isWithin(target, "input, textarea, select, [contenteditable], dialog, [role=dialog]");
}

/** Where the space bar presses something. */
function isPressable(target: EventTarget | null): boolean {
  return isWithin(target, "button, a, summary, [role=button], [role=menuitem]");
}

function isWithin(target: EventTarget | null, selector: string): boolean {
  return target instanceof HTMLElement && target.closest(selector) !== null;
}
