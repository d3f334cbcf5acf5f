import { describe, expect, test } from "vitest";
import { isPress, keysText, type KeyPress } from "../../../app/commands/keys.ts";

const press = (key: string, held: Partial<KeyPress> = {}): KeyPress => ({
  key,
  ctrlKey: false,
  metaKey: false,
  shiftKey: false,
  altKey: false,
  ...held,
});

describe("keys", () => {
  test("Mod is Ctrl or Command, and letters mind Shift", () => {
    expect(isPress("Mod+Z", press("z", { ctrlKey: true }))).toBe(true);
    expect(isPress("Mod+Z", press("z", { metaKey: true }))).toBe(true);
    expect(isPress("Mod+Z", press("Z", { ctrlKey: true, shiftKey: true }))).toBe(false);
    expect(isPress("Mod+Shift+Z", press("Z", { ctrlKey: true, shiftKey: true }))).toBe(true);
    expect(isPress("R", press("r"))).toBe(true);
    expect(isPress("R", press("r", { ctrlKey: true }))).toBe(false);
  });

  test("signs are taken however the keyboard makes them", () => {
    expect(isPress("?", press("?", { shiftKey: true }))).toBe(true);
    expect(isPress("+", press("+", { shiftKey: true }))).toBe(true);
    expect(isPress("/", press("/"))).toBe(true);
  });

  test("are written as they are called", () => {
    expect(keysText("Mod+Shift+Z", false)).toBe("Ctrl Shift Z");
    expect(keysText("Mod+K", true)).toBe("⌘ K");
    expect(keysText("Shift+ArrowLeft", false)).toBe("Shift ←");
    expect(keysText("+", false)).toBe("+");
  });
});
