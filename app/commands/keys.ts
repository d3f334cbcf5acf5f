import type { Command } from "./command.ts";

/** The part of a keyboard event that tells which keys are down. */
export interface KeyPress {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

/** Signs that need Shift on some keyboards and not on others: Shift is not looked at. */
const SHIFT_FREE = /^[^a-z0-9]$/i;

/** Whether a press is the one written as "Mod+Shift+Z". */
export function isPress(written: string, press: KeyPress): boolean {
  const pieces = written.split("+");
  const key = written.endsWith("++") || written === "+" ? "+" : pieces.at(-1)!;
  const wants = (name: string) => pieces.includes(name);
  const mod = press.ctrlKey || press.metaKey;
  return (
    press.key.toLowerCase() === key.toLowerCase() &&
    mod === wants("Mod") &&
    press.altKey === wants("Alt") &&
    (SHIFT_FREE.test(key) || press.shiftKey === wants("Shift"))
  );
}

/** The command a press belongs to. */
export function commandFor(commands: readonly Command[], press: KeyPress): Command | undefined {
  return commands.find((command) => command.keys?.some((written) => isPress(written, press)));
}

const NAMES: Readonly<Record<string, string>> = {
  ArrowLeft: "←",
  ArrowRight: "→",
  ArrowUp: "↑",
  ArrowDown: "↓",
  " ": "Space",
  Escape: "Esc",
};

/** Keys as people read them: "Ctrl Z"; "⌘ Z" on a Mac. */
export function keysText(written: string, isMac: boolean): string {
  const key = written.endsWith("++") || written === "+" ? "+" : written.split("+").at(-1)!;
  const before = written
    .slice(0, written.length - key.length)
    .split("+")
    .filter(Boolean);
  const mods = before.map((mod) => (mod === "Mod" ? (isMac ? "⌘" : "Ctrl") : mod));
  return [...mods, NAMES[key] ?? key].join(" ");
}
