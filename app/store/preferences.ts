import type { UnitSystem } from "../../core/units/index.ts";
import type { Theme } from "../board/board-controller.ts";

/** What a person likes, for all drawings on this device. */
export interface Preferences {
  /** `auto` follows the device. */
  readonly theme: Theme | "auto";
  readonly words: "ground" | "earth";
  /** Which lengths a person reads first and means by a bare number. */
  readonly units: UnitSystem;
  /** Print wires' numbers and parts' captions on the Board. */
  readonly lettering: boolean;
  /** The map of the drawing at the Board's corner; `auto`: where there is room, while part of the drawing lies out of view. */
  readonly map: "auto" | "on" | "off";
  /** Keys without Ctrl, Alt or Command are shortcuts. */
  readonly singleKeys: boolean;
  /** Hints that were done or closed. */
  readonly seen: readonly string[];
}

export const USUAL_PREFERENCES: Preferences = {
  theme: "auto",
  words: "ground",
  units: "metric",
  lettering: true,
  map: "auto",
  singleKeys: true,
  seen: [],
};

/** The part of localStorage that is used. */
export type TextKeeper = Pick<Storage, "getItem" | "setItem">;

const KEY = "groundstrap preferences";

/** What was kept, each missing or unknown value as usual. */
export function readPreferences(keeper: TextKeeper): Preferences {
  let kept: Partial<Record<keyof Preferences, unknown>> = {};
  try {
    kept = Object(JSON.parse(keeper.getItem(KEY) ?? "{}"));
  } catch {
    return USUAL_PREFERENCES;
  }
  const oneOf = <T>(value: unknown, options: readonly T[], usual: T) =>
    options.find((option) => option === value) ?? usual;
  return {
    theme: oneOf(kept.theme, ["auto", "light", "dark", "sunlight"], USUAL_PREFERENCES.theme),
    words: oneOf(kept.words, ["ground", "earth"], USUAL_PREFERENCES.words),
    units: oneOf(kept.units, ["metric", "us"], USUAL_PREFERENCES.units),
    lettering: oneOf(kept.lettering, [true, false], USUAL_PREFERENCES.lettering),
    map: oneOf(kept.map, ["auto", "on", "off"], USUAL_PREFERENCES.map),
    singleKeys: oneOf(kept.singleKeys, [true, false], USUAL_PREFERENCES.singleKeys),
    seen: Array.isArray(kept.seen) ? kept.seen.filter((id) => typeof id === "string") : USUAL_PREFERENCES.seen,
  };
}

/** Keeps them; a device that won't keep anything still works, with the usual ones next time. */
export function keepPreferences(keeper: TextKeeper, preferences: Preferences): void {
  try {
    keeper.setItem(KEY, JSON.stringify(preferences));
  } catch {
    // Private windows and full storage: nothing a person could do about it here.
  }
}

/** The theme shown, once `auto` is settled. */
export function themeOf(preferences: Preferences, deviceIsDark: boolean): Theme {
  return preferences.theme === "auto" ? (deviceIsDark ? "dark" : "light") : preferences.theme;
}
