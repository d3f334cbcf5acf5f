import { fitText, SMALLEST_MM } from "../layout/index.ts";
import { isHotAtRest, wireHot } from "../lists/index.ts";
import type { PaperSource } from "../paper.ts";
import { formatNumber, formatWireSize } from "../../units/index.ts";
import { partName, wireName } from "../words/index.ts";
import type { DrawingWords } from "./drawing-page.ts";

/** Longest label or colour as it stands on a wire; the wire list gives it in full. Millimetres. */
const LONGEST_MM = 26;

/** What the report has to say on the drawing. */
export function reportWords(source: PaperSource): DrawingWords {
  const { netlist, report } = source;
  return {
    partName: (id) => {
      const part = netlist.partAt.get(id)?.part;
      return part ? partName(part) : id;
    },
    wireLook: (id) => {
      const wire = netlist.wireAt.get(id);
      return wire ? wireHot(wire, source) : "unknown";
    },
    wireWords: (id) => {
      const wire = netlist.wireAt.get(id)?.wire;
      const over = `${wire ? shortened(wireName(wire)) : id} ${shortened(wire?.colour ?? "colour ?")}`;
      const length = wire?.metres === undefined ? "length ?" : `${formatNumber(wire.metres)} m`;
      const under = `${wire?.size === undefined ? "size ?" : formatWireSize(wire.size)} · ${length}`;
      return { line: `${over} · ${under}`, over, under };
    },
    terminalMark: (address) => {
      const standing = report.terminals[address];
      if (!standing || standing.hot === "never" || netlist.terminalAt.get(address)?.cover === "cavity") return null;
      if (standing.bare && isHotAtRest(standing.hot)) return "bare";
      return { mark: standing.hot, viaLoad: standing.via === "load" };
    },
  };
}

function shortened(text: string): string {
  return fitText(text, SMALLEST_MM, LONGEST_MM);
}
