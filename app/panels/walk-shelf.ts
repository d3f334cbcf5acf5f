import type { KeyboardEvent } from "react";

/** The arrow keys walk along the whole Shelf. */
export function walkShelf(event: KeyboardEvent<HTMLButtonElement>): void {
  const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key] ?? 0;
  if (step === 0) return;
  event.preventDefault();
  const items = [...document.querySelectorAll<HTMLElement>(".shelf-item")];
  items[(items.indexOf(event.currentTarget) + step + items.length) % items.length]?.focus();
}
