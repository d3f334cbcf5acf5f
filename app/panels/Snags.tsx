import { useState } from "react";
import type { Level } from "../../core/rules/index.ts";
import { useEditor } from "../app-context.tsx";
import { snagKey } from "../commands/snag-commands.ts";
import { LevelMark, levelWords } from "./LevelMark.tsx";
import { SnagItem } from "./SnagItem.tsx";

const LEVELS: readonly Level[] = ["stop", "fix", "advice", "cant-check"];

/** So many at a time: a large drawing may have thousands, and the worst come first. */
const A_PAGE = 100;

/** What is wrong, worst first. */
export function Snags() {
  const snags = useEditor((state) => state.report?.snags);
  const isLate = useEditor((state) => state.reportRevision !== state.revision);
  const isStuck = useEditor((state) => state.analysis === "stuck");
  const [only, setOnly] = useState<Level | null>(null);
  const [most, setMost] = useState(A_PAGE);
  const shown = (snags ?? []).filter((snag) => only === null || snag.level === only);
  const chosen = useEditor((state) => shown.findIndex((snag) => snagKey(snag) === state.chosenSnag));
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
            {shown.slice(0, Math.max(most, chosen + 1)).map((snag) => (
              <SnagItem key={snagKey(snag)} snag={snag} />
            ))}
          </ol>
          {shown.length > Math.max(most, chosen + 1) && (
            <button type="button" onClick={() => setMost(most + A_PAGE)}>
              Show more of the {shown.length}
            </button>
          )}
        </>
      )}
    </section>
  );
}
