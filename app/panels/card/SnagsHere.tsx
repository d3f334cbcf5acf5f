import { useEditor } from "../../app-context.tsx";
import { snagKey } from "../../commands/snag-commands.ts";
import { SnagItem } from "../SnagItem.tsx";

/** Snags that name any of these places. */
export function SnagsHere({ places }: { readonly places: readonly string[] }) {
  const snags = useEditor((state) => state.report?.snags);
  const here = (snags ?? []).filter((snag) => snag.at.some((place) => places.includes(place)));
  if (here.length === 0) return null;
  return (
    <>
      <h4>Snags here</h4>
      <ul className="snag-list">
        {here.map((snag) => (
          <SnagItem key={snagKey(snag)} snag={snag} />
        ))}
      </ul>
    </>
  );
}
