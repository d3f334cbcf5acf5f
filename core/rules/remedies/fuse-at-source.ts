import type { Edit } from "../../document/index.ts";
import type { NetWire } from "../../netlist/index.ts";
import { fitted } from "../../parts/index.ts";
import { formatQuantity } from "../../units/index.ts";
import type { Remedy, Study } from "../rule.ts";
import { isUnder } from "../study/limits.ts";
import type { Leg } from "../study/route.ts";
import { mostAmps } from "../study/worst.ts";
import { nameOf } from "../study/words.ts";
import { fuseFor, fuseOfAtLeast, fuseOfAtMost } from "./fuse-choice.ts";
import { insertInWire } from "./insert-in-wire.ts";
import { NewIds } from "./new-ids.ts";
import { sizeFor } from "./wire-sizes.ts";

/** Near enough to its source for every rule of placing. */
const FUSE_WITHIN_M = 0.15;
/** Amps below which no situation shows what the wire is for. */
const LEAST_LOAD_A = 0.01;
const USUAL_A = 30;

interface Wanted {
  /** Size of the short piece ahead of the fuse. */
  readonly leadSize?: string;
  /** Rating of another fuse it must match, amps. */
  readonly likeA?: number;
}

/**
 * A fuse put into a wire at the end that faces its source, to protect that wire and `behind`. Rated for the load; where the wires
 * are too thin for that, they grow. Empty where no fuse or wire sold is large enough.
 */
export function fuseAtSource(
  study: Study,
  { wire, near }: Leg,
  behind: readonly NetWire[],
  { leadSize, likeA }: Wanted = {},
): readonly Remedy[] {
  const { netlist } = study;
  const wires = [...new Set([wire, ...behind])];
  const loadA = mostAmps(study, wire.wire.id);
  const capacityA = Math.min(...wires.map((each) => each.capacityA ?? Number.POSITIVE_INFINITY));
  const fuse =
    likeA === undefined ? chosenFuse(loadA, capacityA, netlist.system.fuseLoadPercent) : fuseOfAtLeast(likeA);
  if (!fuse) return [];
  const thin = wires.filter((each) => each.capacityA !== null && isUnder(each.capacityA, fuse.ratingA));
  const sizes = thin.map((each) => sizeFor(netlist, each, fuse.ratingA));
  if (sizes.includes(null)) return [];
  const thicker = thin.map((each, at): Edit => ({ op: "set-wire", id: each.wire.id, change: { size: sizes[at]! } }));
  const sized =
    thicker.length > 0 && thin.includes(wire) ? { ...wire.wire, size: sizes[thin.indexOf(wire)]! } : wire.wire;
  const inserted = insertInWire(netlist.document, new NewIds(netlist.document), sized, {
    kind: fitted.fuse,
    props: { ratingA: fuse.ratingA, body: fuse.body, holderA: fuse.ratingA },
    covers: { 1: "covered", 2: "covered" },
    towardsFrom: near === "from" ? "1" : "2",
    towardsTo: near === "from" ? "2" : "1",
    end: near,
    withinM: FUSE_WITHIN_M,
    ...(leadSize === undefined ? {} : { leadSize }),
  });
  const place = nameOf(study, near === "from" ? wire.from.address : wire.to.address);
  return [
    {
      id: "fit-fuse",
      text: `Fit a fuse of ${formatQuantity(fuse.ratingA, "A")} in ${nameOf(study, wire.wire.id)} next to ${place}`,
      edits: [...thicker, ...inserted],
    },
  ];
}

/** Where nothing is known to run, the largest the wires allow, up to a usual one. */
function chosenFuse(loadA: number, capacityA: number, loadPercent: number) {
  if (loadA < LEAST_LOAD_A) return fuseOfAtMost(Math.min(capacityA, USUAL_A));
  return fuseFor(loadA, capacityA, loadPercent) ?? fuseOfAtLeast((loadA * 100) / loadPercent);
}
