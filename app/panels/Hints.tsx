import { useEffect } from "react";
import { useApp, useEditor } from "../app-context.tsx";
import { nextHint, type Hint } from "../store/hints.ts";
import type { Preferences } from "../store/preferences.ts";
import { useWords } from "../use-words.ts";

/** One line at a time for those who are here for the first time, beside the ways to try out; gone for good once done or closed. */
export function Hints() {
  const { editor } = useApp();
  const hint = useEditor(nextHint);
  const isDone = useEditor((state) => hint?.isDone(state) ?? false);
  const seen = (id: string) => editor.setPreferences({ seen: [...editor.state.preferences.seen, id] });
  useEffect(() => {
    if (hint !== null && isDone) editor.setPreferences({ seen: [...editor.state.preferences.seen, hint.id] });
  }, [editor, hint, isDone]);
  if (hint === null) return null;
  return <ShownHint hint={hint} onClose={() => seen(hint.id)} />;
}

function ShownHint({ hint, onClose }: { readonly hint: Hint; readonly onClose: () => void }) {
  const words = useWords();
  return (
    <div className="hint" role="note" aria-label="Hint">
      <p>{words(hint.text)}</p>
      {hint.id === "words" && <WordsAndUnits onChosen={onClose} />}
      <button type="button" className="close" aria-label="Close this hint" onClick={onClose}>
        <span aria-hidden="true">×</span>
      </button>
    </div>
  );
}

const CHOICES: readonly (Pick<Preferences, "words" | "units"> & { readonly label: string })[] = [
  { words: "ground", units: "us", label: "Ground, ft" },
  { words: "ground", units: "metric", label: "Ground, m" },
  { words: "earth", units: "metric", label: "Earth, m" },
];

function WordsAndUnits({ onChosen }: { readonly onChosen: () => void }) {
  const { editor } = useApp();
  return CHOICES.map(({ label, words, units }) => (
    <button
      key={label}
      type="button"
      title={`Say ${words}, measure in ${units === "us" ? "feet" : "metres"}; the Settings have it too`}
      onClick={() => {
        editor.setPreferences({ words, units });
        onChosen();
      }}
    >
      {label}
    </button>
  ));
}
