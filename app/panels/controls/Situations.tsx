import { useState } from "react";
import type { Situation } from "../../../core/document/index.ts";
import { useApp, useDrawing, useEditor } from "../../app-context.tsx";
import { FocusedInput } from "../../fields/FocusedInput.tsx";
import { controlsOf } from "../../store/controls-of.ts";
import type { Positions } from "../../worker/protocol.ts";

/** Saved settings of all controls; the one the controls stand in is marked. */
export function Situations() {
  const { editor } = useApp();
  const drawing = useDrawing();
  const positions = useEditor((state) => state.positions);
  const saved = (drawing.situations ?? []).filter((situation) => situation.id !== "rest");
  const stands = (set: Positions) =>
    controlsOf(drawing).every(({ id, positions: [rest] }) => (positions[id] ?? rest) === (set[id] ?? rest));
  const isSaved = stands({}) || saved.some((situation) => stands(situation.set ?? {}));
  return (
    <fieldset className="situations" aria-label="Situations">
      <button type="button" className="situation" aria-pressed={stands({})} onClick={() => editor.stand({})}>
        All at rest
      </button>
      {saved.map((situation) => (
        <SituationButton key={situation.id} situation={situation} isNow={stands(situation.set ?? {})} />
      ))}
      {!isSaved && <SaveSituation />}
    </fieldset>
  );
}

function SituationButton({ situation, isNow }: { readonly situation: Situation; readonly isNow: boolean }) {
  const { editor } = useApp();
  const drawing = useDrawing();
  const name = situation.name ?? situation.id;
  const remove = () =>
    editor.dispatch({
      label: `Forget situation ${name}`,
      edits: [
        { op: "set-situations", situations: (drawing.situations ?? []).filter((one) => one.id !== situation.id) },
      ],
    });
  return (
    <span className="situation-pair">
      <button
        type="button"
        className="situation"
        aria-pressed={isNow}
        onClick={() => editor.stand(situation.set ?? {})}
      >
        {name}
      </button>
      {isNow && (
        <button
          type="button"
          className="situation-forget"
          aria-label={`Forget situation ${name}`}
          title="Forget this situation"
          onClick={remove}
        >
          ×
        </button>
      )}
    </span>
  );
}

/** The controls stand as no saved situation has them: give that a name. */
function SaveSituation() {
  const { editor } = useApp();
  const drawing = useDrawing();
  const positions = useEditor((state) => state.positions);
  const [name, setName] = useState<string | null>(null);
  if (name === null) {
    return (
      <button type="button" className="situation situation-new" onClick={() => setName("")}>
        Keep this one…
      </button>
    );
  }
  const save = () => {
    setName(null);
    if (name.trim() === "") return;
    const others = drawing.situations ?? [];
    const set = Object.fromEntries(
      controlsOf(drawing).flatMap(({ id, positions: [rest] }) =>
        positions[id] === undefined || positions[id] === rest ? [] : [[id, positions[id]]],
      ),
    );
    editor.dispatch({
      label: `Keep situation ${name.trim()}`,
      edits: [{ op: "set-situations", situations: [...others, { id: freeId(others), name: name.trim(), set }] }],
    });
  };
  return (
    <FocusedInput
      className="situation-name"
      aria-label="Name of the situation"
      placeholder="Name, then Enter"
      value={name}
      onChange={(event) => setName(event.target.value)}
      onBlur={save}
      onKeyDown={(event) => {
        if (event.key === "Enter") save();
        if (event.key === "Escape") setName(null);
      }}
    />
  );
}

function freeId(situations: readonly Situation[]): string {
  for (let number = 1; ; number += 1)
    if (!situations.some((one) => one.id === `situation${number}`)) return `situation${number}`;
}
