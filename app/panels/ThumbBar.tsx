import { useApp, useEditor } from "../app-context.tsx";
import type { PlaceId } from "../store/editor-state.ts";
import { Glyph, type GlyphName } from "./Glyph.tsx";

const THUMBS: readonly { readonly place: PlaceId; readonly name: string; readonly glyph: GlyphName }[] = [
  { place: "shelf", name: "Shelf", glyph: "shelf" },
  { place: "card", name: "Card", glyph: "card" },
  { place: "controls", name: "Controls", glyph: "controls" },
  { place: "snags", name: "Snags", glyph: "snags" },
  { place: "command-box", name: "More", glyph: "more" },
];

/** On a small screen: the places, where a thumb reaches them. */
export function ThumbBar() {
  const { editor } = useApp();
  const place = useEditor((state) => state.place);
  const worst = useEditor((state) => state.report?.snags[0]?.level);
  const count = useEditor((state) => state.report?.snags.length ?? 0);
  return (
    <nav className="thumb-bar" aria-label="Places">
      {THUMBS.map((thumb) => (
        <button
          key={thumb.place}
          type="button"
          aria-pressed={place === thumb.place}
          onClick={() => editor.show(place === thumb.place ? null : thumb.place)}
        >
          <Glyph name={thumb.glyph} />
          <span>{thumb.name}</span>
          {thumb.place === "snags" && count > 0 && (
            <span className="thumb-count" data-level={worst}>
              {count}
            </span>
          )}
        </button>
      ))}
    </nav>
  );
}
