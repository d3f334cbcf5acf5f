import type { Edit } from "../../document/index.ts";
import { ampsThrough } from "../../readings/index.ts";
import { standardRatingsA } from "../../reference/index.ts";
import { formatQuantity, formatWireSize } from "../../units/index.ts";
import type { Remedy, Study } from "../rule.ts";
import { deviceAt } from "../study/devices.ts";
import { isUnder } from "../study/limits.ts";
import { nameOf } from "../study/words.ts";
import { worstOf } from "../study/worst.ts";
import { fuseOfAtLeast, fuseOfAtMost } from "./fuse-choice.ts";
import { sizeFor } from "./wire-sizes.ts";

/**
 * The edits that give the device a guard names another rating, with the body, the holder and the wires behind it that must grow
 * with it. `null` where it is not ours to change (the vehicle's own fuse) or no wire is thick enough.
 */
export function rerateDevice(study: Study, guardAt: string, ratingA: number): readonly Edit[] | null {
  const device = deviceAt(study.netlist, guardAt);
  const rated = device?.part.kind.rerate?.(device.part.settings, device.spec.terminal, ratingA);
  if (!device || !rated) return null;
  const wires = thickenBehind(study, guardAt, ratingA);
  if (!wires) return null;
  const { settings, part, terminals } = device.part;
  const holderA = settings["holderA"];
  const body = bodyFor(settings["body"], ratingA);
  return [
    {
      op: "set-props",
      id: part.id,
      change: {
        ...rated,
        ...body,
        ...(typeof holderA === "number" && isUnder(holderA, ratingA) ? { holderA: ratingA } : {}),
      },
    },
    ...(body.body
      ? terminals.map(({ address }): Edit => ({ op: "set-cover", terminal: address, cover: "covered" }))
      : []),
    ...wires,
  ];
}

/** The remedy of a larger fuse, named with the wires that grow with it. */
export function largerDevice(study: Study, guardAt: string, ratingA: number): readonly Remedy[] {
  const edits = rerateDevice(study, guardAt, ratingA);
  if (!edits) return [];
  const wires = edits.flatMap((edit) =>
    edit.op === "set-wire" && edit.change.size !== undefined
      ? [`${nameOf(study, edit.id)} to ${formatWireSize(edit.change.size)}`]
      : [],
  );
  const rating = formatQuantity(ratingA, "A");
  const text = `Fit ${rating} in ${nameOf(study, guardAt)}${wires.length > 0 ? `, and change ${wires.join(", ")}` : ""}`;
  return [{ id: "larger-fuse", text, edits }];
}

/** The remedy of the largest fuse that is at most so many amps; only where that still carries what runs through the present one. */
export function smallerDevice(study: Study, guardAt: string, atMostA: number): readonly Remedy[] {
  const device = deviceAt(study.netlist, guardAt);
  const fuse = fuseOfAtMost(atMostA);
  if (!device || !fuse) return [];
  const loadA = worstOf(study, ({ solution }) => Math.abs(ampsThrough(solution, device)))?.value ?? 0;
  if (isUnder(fuse.ratingA * study.netlist.system.fuseLoadPercent, loadA * 100)) return [];
  const edits = rerateDevice(study, guardAt, fuse.ratingA);
  const text = `Fit ${formatQuantity(fuse.ratingA, "A")} in ${nameOf(study, guardAt)}`;
  return edits ? [{ id: "smaller-fuse", text, edits }] : [];
}

function thickenBehind({ netlist, standing }: Study, guardAt: string, ratingA: number): Edit[] | null {
  const thin = netlist.wires.filter(({ index, capacityA }) => {
    const guards = [standing.wires[index]!.guard, ...standing.wires[index]!.ways.map(({ guard }) => guard)];
    return guards.some((guard) => guard?.at === guardAt) && capacityA !== null && isUnder(capacityA, ratingA);
  });
  const sizes = thin.map((wire) => sizeFor(netlist, wire, ratingA));
  if (sizes.includes(null)) return null;
  return thin.map(({ wire }, at) => ({ op: "set-wire", id: wire.id, change: { size: sizes[at]! } }));
}

/** Another body when this rating is not sold in the present one; nothing where a part has no choice of body. */
function bodyFor(body: unknown, ratingA: number): { body?: string } {
  if (typeof body !== "string" || standardRatingsA(body).includes(ratingA)) return {};
  const choice = fuseOfAtLeast(ratingA);
  return choice ? { body: choice.body } : {};
}
