import { useEffect, useRef } from "react";
import type { Snag } from "../../core/rules/index.ts";
import { useApp, useDrawing, useEditor } from "../app-context.tsx";
import { describeEdit } from "../commands/describe-edit.ts";
import { choosing, remedyPlan, snagKey } from "../commands/snag-commands.ts";
import { placeName } from "../store/part-view.ts";
import { useWords } from "../use-words.ts";
import { LevelMark } from "./LevelMark.tsx";

/** One snag in outcome words. Chosen, it shows its places on the Board and the remedies with all they would change. */
export function SnagItem({ snag }: { readonly snag: Snag }) {
  const { runner, editor } = useApp();
  const words = useWords();
  const isChosen = useEditor((state) => state.chosenSnag === snagKey(snag));
  const item = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (isChosen) item.current?.scrollIntoView({ block: "nearest" });
  }, [isChosen]);
  return (
    <li ref={item} className="snag" data-level={snag.level} data-chosen={isChosen || undefined}>
      <button
        type="button"
        className="snag-head"
        aria-expanded={isChosen}
        onClick={() => (isChosen ? editor.set({ chosenSnag: null, spotlight: [] }) : runner.carryOut(choosing(snag)))}
      >
        <LevelMark level={snag.level} />
        <span className="snag-text">{words(snag.text)}</span>
      </button>
      {isChosen && <SnagMore snag={snag} />}
    </li>
  );
}

function SnagMore({ snag }: { readonly snag: Snag }) {
  const { editor } = useApp();
  const drawing = useDrawing();
  const words = useWords();
  return (
    <div className="snag-more">
      <p className="snag-places">
        {snag.at.map((place) => (
          <button
            key={place}
            type="button"
            className="place-link"
            onClick={() => editor.set({ selection: new Set([idOf(place)]), reveal: { places: [place] } })}
          >
            {placeName(drawing, place)}
          </button>
        ))}
      </p>
      {snag.remedies.map((remedy) => (
        <RemedyButton key={remedy.id} remedy={remedy} />
      ))}
      <p className="snag-rule">
        Rule: <code>{words(snag.rule)}</code>
      </p>
    </div>
  );
}

function RemedyButton({ remedy }: { readonly remedy: Snag["remedies"][number] }) {
  const { runner } = useApp();
  const drawing = useDrawing();
  const words = useWords();
  const isCurrent = useEditor((state) => state.reportRevision === state.revision);
  const canEdit = useEditor((state) => state.access === "editing");
  if (remedy.edits.length === 0) return <p className="remedy-by-hand">{words(remedy.text)}</p>;
  return (
    <div className="remedy">
      <button
        type="button"
        className="remedy-button"
        disabled={!isCurrent || !canEdit}
        onClick={() => runner.carryOut(remedyPlan(remedy))}
      >
        {words(remedy.text)}
      </button>
      <ul className="remedy-changes" aria-label="What it will change">
        {remedy.edits.map((edit, index) => (
          <li key={index}>{words(describeEdit(drawing, edit))}</li>
        ))}
      </ul>
    </div>
  );
}

function idOf(place: string): string {
  const dot = place.indexOf(".");
  return dot < 0 ? place : place.slice(0, dot);
}
