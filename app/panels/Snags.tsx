import { useState } from "react";
import type { Level } from "../../core/rules/index.ts";
import { useEditor } from "../app-context.tsx";
import { snagKey } from "../commands/snag-commands.ts";
import { LevelMark, levelWords } from "./LevelMark.tsx";
import { SnagItem } from "./SnagItem.tsx";

const LEVELS: readonly Level[] = ["stop", "fix", "advice", "cant-check"];

/** What is wrong, worst first. */
export function Snags() {
  const snags = useEditor((state) => state.report?.snags);
  const isLate = useEditor((state) => state.reportRevision !== state.revision);
  const isStuck = useEditor((state) => state.analysis === "stuck");
  const [only, setOnly] = useState<Level | null>(null);
  const shown = (snags ?? []).filter((snag) => only === null || snag.level === only);
  return (
    <section className="snags" aria-label="Snags" data-late={isLate || undefined}>
      <h2 className="sleeve">Snags</h2>
      {snags === undefined ? (
        <p className="quiet">
          {isStuck ? "This drawing could not be analysed." : "Looking at every position of every control…"}
        </p>
      ) : (
        <>
          <fieldset className="snag-counts" aria-label="Show one level">
            {LEVELS.map((level) => {
              const count = snags.filter((snag) => snag.level === level).length;
              if (count === 0) return null;
              return (
                <button
                  key={level}
                  type="button"
                  aria-pressed={only === level}
                  title={levelWords(level)}
                  onClick={() => setOnly(only === level ? null : level)}
                >
                  <LevelMark level={level} /> {count}
                </button>
              );
            })}
          </fieldset>
          {snags.length === 0 && (
            <p className="all-clear">
              No snags found in any position. A plan is not an inspection: prove it with a meter.
            </p>
          )}
          <ol className="snag-list">
            {shown.map((snag) => (
              <SnagItem key={snagKey(snag)} snag={snag} />
            ))}
          </ol>
        </>
      )}
    </section>
  );
}
