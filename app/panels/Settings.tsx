import { useApp, useEditor } from "../app-context.tsx";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { FlagField } from "../fields/FlagField.tsx";
import type { Preferences } from "../store/preferences.ts";
import { Dialog } from "./Dialog.tsx";

const THEMES = [
  { value: "auto", label: "as the device has it" },
  { value: "light", label: "light: ink on paper" },
  { value: "dark", label: "dark: night" },
  { value: "sunlight", label: "sunlight: strongest contrast" },
];
const UNITS = [
  { value: "metric", label: "metres" },
  { value: "us", label: "feet and inches" },
];
const WORDS = [
  { value: "ground", label: "ground" },
  { value: "earth", label: "earth" },
];

const MAPS = [
  { value: "auto", label: "when part of it is out of view" },
  { value: "on", label: "always" },
  { value: "off", label: "never" },
];

/** What a person likes, for all drawings on this device. */
export function Settings() {
  const { editor } = useApp();
  const preferences = useEditor((state) => state.preferences);
  const set =
    <K extends keyof Preferences>(key: K) =>
    (value: string) =>
      editor.setPreferences({ [key]: value });
  return (
    <Dialog title="Settings">
      <ChoiceField label="Theme" value={preferences.theme} options={THEMES} onCommit={set("theme")} />
      <ChoiceField
        label="Lengths"
        value={preferences.units}
        options={UNITS}
        help="Both are always read, whichever you type."
        onCommit={set("units")}
      />
      <ChoiceField label="Say" value={preferences.words} options={WORDS} onCommit={set("words")} />
      <FlagField
        label="Wire numbers and ratings on the Board"
        value={preferences.lettering}
        onCommit={(lettering) => editor.setPreferences({ lettering })}
      />
      <ChoiceField label="Map of the drawing" value={preferences.map} options={MAPS} onCommit={set("map")} />
      <FlagField
        label="Single keys are shortcuts"
        help="Off: only keys with Ctrl, Alt or Command do anything, for those who speak to their computer."
        value={preferences.singleKeys}
        onCommit={(singleKeys) => editor.setPreferences({ singleKeys })}
      />
      <p className="quiet">Wire sizes (AWG or mm²) and volts belong to the drawing: select nothing and see the Card.</p>
    </Dialog>
  );
}
