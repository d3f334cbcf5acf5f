import { wireSurroundings, type Document, type Edit, type Transaction } from "../document/index.ts";
import type { Netlist, NetWire } from "../netlist/index.ts";
import { wireCapacityA } from "../reference/index.ts";
import { Draft, rerating, sizesFor, type Scope } from "./draft.ts";
import { grow, type Unfit } from "./grow.ts";
import { shrink } from "./shrink.ts";

/** One value Size it would choose, and why. */
export interface Choice {
  /** Wire or part id. */
  readonly at: string;
  readonly setting: string;
  readonly from: unknown;
  readonly to: unknown;
  readonly why: string;
}

/** What Size it proposes. Nothing is changed until the transaction is dispatched. */
export interface Proposal {
  /** `null`: everything is as it should be already, or nothing may be changed. */
  readonly transaction: Transaction | null;
  readonly choices: readonly Choice[];
  /** Places where nothing sold, or nothing we may choose, fits. */
  readonly unfit: readonly Unfit[];
}

/**
 * Chooses wire, device, contact and barrel for the wires and parts in scope so that every sizing rule holds with the least copper:
 * devices by the current they carry, wires by the device that guards them, then thicker where drop asks for it, then thinner
 * wherever that raises nothing. Values marked as fixed stay. In the result no single wire could be one size thinner.
 */
export function sizeIt(document: Document, scope: Scope = "all"): Proposal {
  const draft = new Draft(document, scope);
  draft.apply(thickestWires(draft));
  draft.expectLoadsAsNow();
  rateDevices(draft);
  draft.apply(wiresByGuard(draft));
  const unfit = grow(draft);
  shrink(draft);
  const choices = choicesBetween(document, draft);
  return {
    transaction: choices.length === 0 ? null : { label: "Size it", edits: choices.map(editFor) },
    choices,
    unfit,
  };
}

/** Copper enough everywhere first, so that every load draws what it will draw. */
function thickestWires(draft: Draft): Edit[] {
  const { system } = draft.study.netlist;
  return draft.wires.map(({ wire }) => ({
    op: "set-wire",
    id: wire.id,
    change: { size: sizesFor(system, wire.size).at(-1)! },
  }));
}

/** Each device the smallest sold that is not loaded over the limit by what it carries; one that carries nothing stays. */
function rateDevices(draft: Draft): void {
  const { situations, netlist } = draft.study;
  const percent = netlist.system.fuseLoadPercent;
  for (const { index, branch } of draft.devices) {
    const amps = Math.max(
      ...situations.map(({ solution, settled }) => (settled ? Math.abs(solution.branchA[branch] ?? 0) : 0)),
    );
    // Looked up anew: the ways of one block are one setting, and the last one was just changed.
    const device = draft.devices.find((one) => one.index === index);
    const edit = device && amps > CARRIES_FROM_A ? rerating(device, (amps * 100) / percent) : null;
    if (!device || !edit) continue;
    draft.apply([edit]);
    draft.note(
      device.part.part.id,
      `It carries ${Number(amps.toPrecision(3))} A, and is to be loaded to ${percent} % at most.`,
    );
  }
}

/** Less than this is leakage. */
const CARRIES_FROM_A = 1e-3;

/** Each wire the thinnest that carries its guard's rating and its own current. */
function wiresByGuard(draft: Draft): Edit[] {
  const { netlist, situations, standing } = draft.study;
  return draft.wires.map((net) => {
    const { wire, index } = net;
    const ratings = standing.wires[index]!.ways.map(({ guard }) => guard?.ratingA ?? 0);
    const amps = situations.map(({ wires }) => Math.abs(wires[wire.id]?.amps ?? 0));
    const needA = Math.max(...ratings, ...amps);
    draft.note(wire.id, "The thinnest that its fuse and its current allow.");
    return { op: "set-wire", id: wire.id, change: { size: thinnestFor(netlist, net, needA) } };
  });
}

function thinnestFor({ system }: Netlist, { wire }: NetWire, amps: number): string {
  const sold = sizesFor(system, wire.size);
  const fits = sold.find((size) => {
    const capacityA = wireCapacityA({ size, ...wireSurroundings(wire, system) }, system.capacityTable);
    return capacityA !== null && capacityA * (1 + 1e-9) >= amps;
  });
  return fits ?? sold.at(-1)!;
}

function choicesBetween(before: Document, draft: Draft): Choice[] {
  const wires = draft.document.wires.flatMap((wire, at): Choice[] => {
    const from = before.wires[at]!.size;
    if (from === wire.size) return [];
    return [{ at: wire.id, setting: "size", from, to: wire.size, why: draft.reasons.get(wire.id) ?? "" }];
  });
  const parts = draft.document.parts.flatMap((part, at) => {
    const from = before.parts[at]!.props ?? {};
    return Object.entries(part.props ?? {}).flatMap(([setting, to]): Choice[] => {
      if (JSON.stringify(from[setting]) === JSON.stringify(to)) return [];
      return [{ at: part.id, setting, from: from[setting], to, why: draft.reasons.get(part.id) ?? "" }];
    });
  });
  return [...wires, ...parts];
}

function editFor({ at, setting, to }: Choice): Edit {
  if (setting === "size") return { op: "set-wire", id: at, change: { size: to as string } };
  return { op: "set-props", id: at, change: { [setting]: to } };
}
