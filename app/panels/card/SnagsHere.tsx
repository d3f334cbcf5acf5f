import type { Snag } from "../../../core/rules/index.ts";
import { useApp, useEditor } from "../../app-context.tsx";
import { choosing, snagKey } from "../../commands/snag-commands.ts";
import { useIsSmall } from "../../use-is-small.ts";
import { useWords } from "../../use-words.ts";
import { LevelMark } from "../LevelMark.tsx";
import { SnagItem } from "../SnagItem.tsx";

/** Snags that name any of these places: in full where the Card stands alone, else as the way to them in the Snags beside it. */
export function SnagsHere({ places }: { readonly places: readonly string[] }) {
  const isSmall = useIsSmall();
  const snags = useEditor((state) => state.report?.snags);
  const here = (snags ?? []).filter((snag) => snag.at.some((place) => places.includes(place)));
  if (here.length === 0) return null;
  return (
    <>
      <h4>Snags here</h4>
      <ul className="snag-list">
        {here.map((snag) =>
          isSmall ? <SnagItem key={snagKey(snag)} snag={snag} /> : <SnagLink key={snagKey(snag)} snag={snag} />,
        )}
      </ul>
    </>
  );
}

function SnagLink({ snag }: { readonly snag: Snag }) {
  const { runner } = useApp();
  const words = useWords();
  return (
    <li className="snag" data-level={snag.level}>
      <button type="button" className="snag-head" onClick={() => runner.carryOut(choosing(snag))}>
        <LevelMark level={snag.level} />
        <span className="snag-text">{words(snag.text)}</span>
      </button>
    </li>
  );
}
