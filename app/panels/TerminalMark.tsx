import type { ReportTerminal } from "../../core/report/index.ts";

type Hot = ReportTerminal["hot"] | "unknown";

/** How a terminal stands, told by shape: full disc always, half disc at rest, ring switched, dot never. */
export function TerminalMark({ standing }: { readonly standing: Pick<ReportTerminal, "hot" | "via"> | undefined }) {
  const hot: Hot = standing?.hot ?? "unknown";
  return (
    <svg className="terminal-mark" data-hot={hot} aria-hidden="true" width="14" height="14" viewBox="-7 -7 14 14">
      {hot === "always" && <circle r="5.5" className="mark-full" />}
      {hot === "at-rest" && (
        <>
          <circle r="5" className="mark-ring" />
          <path d="M0 -5 A5 5 0 0 0 0 5 Z" className="mark-full" />
        </>
      )}
      {hot === "switched" && <circle r="5" className="mark-ring" />}
      {hot === "never" && <circle r="2" className="mark-full" />}
      {hot === "unknown" && <path d="M-4 0 H4" className="mark-ring" />}
      {standing?.via === "load" && <path d="M-6.5 6 L6.5 -6" className="mark-ring" />}
    </svg>
  );
}
