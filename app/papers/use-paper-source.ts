import { useMemo } from "react";
import { buildNetlist } from "../../core/netlist/index.ts";
import { builtBefore, type PaperSource } from "../../core/papers/index.ts";
import { useDrawing, useEditor } from "../app-context.tsx";

/** What papers are made from; `null` until the analysis has caught up with the drawing. */
export function usePaperSource(): PaperSource | null {
  const drawing = useDrawing();
  const report = useEditor((state) => (state.reportRevision === state.revision ? state.report : null));
  return useMemo(() => {
    if (report === null) return null;
    const previous = builtBefore(drawing);
    return { document: drawing, netlist: buildNetlist(drawing), report, ...(previous && { previous }) };
  }, [drawing, report]);
}
