import type { WireEnd } from "../../document/index.ts";
import type { NetTerminal, NetWire } from "../../netlist/index.ts";
import type { Terminal } from "../../parts/index.ts";
import { barrelFits, barrelFor, crimpPullOut } from "../../reference/index.ts";
import type { PaperSource } from "../paper.ts";
import { terminalName } from "../words/index.ts";

/** What is crimped at one place: a ring per wire on a stud, or all wires of a terminal in one barrel. */
export interface JointRow {
  readonly place: string;
  readonly wires: readonly NetWire[];
  /** Copper of all of them together, mm²; `null` when a size is unknown. */
  readonly totalMm2: number | null;
  /** "ring for M8", "push-on". */
  readonly terminal: string;
  /** Barrel as stated or as the copper asks for. */
  readonly barrel: string;
  /** `false`: the stated barrel is too small or too large; `null`: can't be said. */
  readonly fits: boolean | null;
  /** Pull the joint must stand, as its thinnest wire. */
  readonly pull: { readonly minN: number; readonly lbf: number } | null;
}

/** What ends a wire where nobody said: by what it is made fast to. Common practice, no source. */
const USUAL: Readonly<Record<Terminal["fixing"], string>> = {
  stud: "ring",
  "ground-screw": "ring",
  tab: "push-on, insulated",
  contact: "contact of the plug",
  lead: "butt joint",
  joint: "crimp joint",
};

/** Every joint of the drawing, part by part. */
export function jointRows(source: PaperSource): JointRow[] {
  return source.netlist.terminals.flatMap((terminal) => {
    const wires = terminal.wires.map((number) => source.netlist.wires[number]!);
    const isRinged = terminal.terminal.fixing === "stud" || terminal.terminal.fixing === "ground-screw";
    const groups = isRinged ? wires.map((wire) => [wire]) : wires.length === 0 ? [] : [wires];
    return groups.map((group) => jointOf(terminal, group));
  });
}

/** How one end of a wire is finished: "ring for M8, blue". */
export function endWords(terminal: NetTerminal, wire: NetWire): string {
  const { terminal: sort, barrel } = jointOf(terminal, [wire]);
  return `${sort}, ${barrel}`;
}

function jointOf(terminal: NetTerminal, wires: readonly NetWire[]): JointRow {
  const ends = wires.map((wire): WireEnd => (wire.from === terminal ? wire.wire.ends?.from : wire.wire.ends?.to) ?? {});
  const areas = wires.map(({ areaMm2 }) => areaMm2);
  const totalMm2 = areas.includes(null) ? null : areas.reduce<number>((sum, area) => sum + (area ?? 0), 0);
  const splice = terminal.part.kind.facts?.(terminal.part.settings).splice;
  const stated = ends.find(({ barrel }) => barrel)?.barrel ?? splice?.barrel ?? undefined;
  const stud = ends.find((end) => end.stud)?.stud;
  const sort = ends.find((end) => end.terminal)?.terminal ?? USUAL[terminal.terminal.fixing];
  return {
    place: terminalName(terminal),
    wires,
    totalMm2,
    terminal: stud ? `${sort} for ${stud}` : sort,
    barrel: stated ?? barrelWords(totalMm2),
    fits: stated === undefined || totalMm2 === null ? null : barrelFits(stated, totalMm2),
    pull: thinnestPull(wires),
  };
}

function barrelWords(totalMm2: number | null): string {
  if (totalMm2 === null) return "size not stated";
  const barrel = barrelFor(totalMm2);
  if (barrel) return `${barrel.colour} (${barrel.awg} AWG)`;
  return totalMm2 > 1 ? "sized for the cable" : "for thin wire";
}

function thinnestPull(wires: readonly NetWire[]): JointRow["pull"] {
  if (wires.some(({ wire }) => wire.size === undefined)) return null;
  const pulls = wires.map(({ wire }) => crimpPullOut(wire.size!));
  return pulls.includes(null)
    ? null
    : pulls.reduce((least, pull) => (least === null || pull!.minN < least.minN ? pull : least), null);
}
