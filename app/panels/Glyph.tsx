/** Small signs of our own for buttons, one stroke path each on a field of 24 by 24. */
const PATHS = {
  strap:
    "M5 8a2.6 2.6 0 1 0 .1 0M19 8a2.6 2.6 0 1 0 .1 0M6.5 13c2 5 9 5 11 0M8.3 12c1.6 2.6 5.8 2.6 7.4 0M12 17v2M8 19.5h8M10 22h4",
  find: "M10.5 4a6.5 6.5 0 1 0 .1 0M15.4 15.4 L21 21",
  undo: "M9 5 4 10l5 5M4 10h9a6 6 0 0 1 0 12h-3",
  redo: "M15 5l5 5-5 5M20 10h-9a6 6 0 0 0 0 12h3",
  paper: "M6 3h9l4 4v14H6zM15 3v4h4M9 12h7M9 16h7",
  help: "M12 3a9 9 0 1 0 .1 0M9.3 9.3a2.8 2.8 0 1 1 3.9 2.6c-.9.4-1.2 1-1.2 2M12 17.2v.3",
  settings: "M4 7h9M17 7h3M15 4.5v5M4 17h3M11 17h9M9 14.5v5M4 12h12M20 12h0M18 9.8v4.4",
  shelf: "M3 20h18M5 20V9h5v11M13 20v-7h6v7M3 4h18",
  card: "M5 4h14v16H5zM8 8h8M8 12h8M8 16h4",
  controls: "M8 4v16M16 4v16M5 8h6M13 15h6",
  snags: "M12 4 21 19H3zM12 10v4M12 16.4v.3",
  more: "M5 12h.1M12 12h.1M19 12h.1",
  touch:
    "M12 21c-4 0-6-3-7-7l-1-3c1-1 2.3-.6 3 .6L8.500 13V5.500a1.500 1.500 0 0 1 3 0V11M11.500 10a1.500 1.500 0 0 1 3 0v1a1.500 1.500 0 0 1 3 0v1.500a1.500 1.500 0 0 1 2.500 1V16c0 3-2 5-5 5z",
  meter: "M5 4h14v16H5zM8 7h8v4H8zM12 17.500l2.500-3.500M9.500 14h.1M14.500 17.500h.1",
  drill: "M3 12h6M15 12h6M9 12l3-6M9.500 18h.1M13 4l5 5M18 4l-5 5",
  size: "M4 4v16M20 4v16M4 12h16M7.500 8.500 4 12l3.500 3.500M16.500 8.500 20 12l-3.500 3.500",
  outline: "M4 6h3M10 6h10M7 12h3M13 12h7M7 18h3M13 18h7",
} as const;

export type GlyphName = keyof typeof PATHS;

export function Glyph({ name }: { readonly name: GlyphName }) {
  return (
    <svg className={`glyph glyph-${name}`} aria-hidden="true" width="24" height="24" viewBox="0 0 24 24">
      <path d={PATHS[name]} />
    </svg>
  );
}
