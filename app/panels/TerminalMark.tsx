import { markStrokes, type Mark } from "../../core/parts/index.ts";
import type { ReportTerminal } from "../../core/report/index.ts";
import { StrokeShape } from "./StrokeShape.tsx";

const MARK_OF: Readonly<Record<ReportTerminal["hot"], Mark>> = {
  always: "always",
  "at-rest": "at-rest",
  switched: "switched",
  never: "dead",
};

/** How a terminal stands, by the same mark as on the Board and on paper. */
export function TerminalMark({ standing }: { readonly standing: Pick<ReportTerminal, "hot" | "via"> | undefined }) {
  return standing === undefined ? null : <MarkPicture mark={MARK_OF[standing.hot]} viaLoad={standing.via === "load"} />;
}

export function MarkPicture({ mark, viaLoad = false }: { readonly mark: Mark; readonly viaLoad?: boolean }) {
  return (
    <svg
      className="symbol terminal-mark"
      data-mark={mark}
      aria-hidden="true"
      width="18"
      height="18"
      viewBox="-0.42 -0.42 0.84 0.84"
    >
      {markStrokes(mark, viaLoad).map((stroke, index) => (
        <StrokeShape key={index} stroke={stroke} />
      ))}
    </svg>
  );
}
