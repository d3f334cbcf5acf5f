import type { ReportSituation } from "../../report/index.ts";
import type { PaperSource } from "../paper.ts";
import { partName } from "../words/index.ts";

/** A declared situation with its readings, and how to bring it about. */
export interface WorkingSituation {
  readonly id: string;
  readonly name: string;
  /** "engine running, S1 Counter on". */
  readonly set: string;
  readonly isRunning: boolean;
  readonly readings: ReportSituation;
}

/** The situations a person declared; rest is not among them. */
export function workingSituations({ document, netlist, report }: PaperSource): WorkingSituation[] {
  return (document.situations ?? []).flatMap(({ id, name, set = {} }) => {
    const readings = report.situations[id];
    if (id === "rest" || !readings) return [];
    const words = netlist.controls.flatMap((control) => {
      const position = set[control.id];
      if (position === undefined || position === control.positions[0]) return [];
      return [`${control.part ? partName(control.part.part) : control.id} ${position}`];
    });
    const isRunning = set["engine"] !== undefined && set["engine"] !== "off";
    return [{ id, name: name ?? id, set: words.join(", ") || "everything off", isRunning, readings }];
  });
}
