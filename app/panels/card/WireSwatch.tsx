import { parseWireColour, wireColourName } from "../../../core/reference/index.ts";

/** A stretch of cable in its colours, tracer as stripes. */
export function WireSwatch({ colour }: { readonly colour: string | undefined }) {
  const read = colour === undefined ? null : parseWireColour(colour);
  const name = colour === undefined ? "colour not said" : wireColourName(colour);
  return (
    <svg className="wire-swatch" role="img" aria-label={name} width="72" height="20" viewBox="0 0 72 20">
      <path d="M0 10 H72" className="swatch-copper" />
      <rect
        x="8"
        y="4"
        width="56"
        height="12"
        rx="3"
        className={read ? "swatch-skin" : "swatch-unsaid"}
        fill={read?.base.rgb ?? "none"}
      />
      {read?.tracer && <path d="M8 10 H64" stroke={read.tracer.rgb} strokeWidth="3.5" />}
    </svg>
  );
}
