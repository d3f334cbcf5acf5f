import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Document } from "../../core/document/index.ts";
import { buildNetlist } from "../../core/netlist/index.ts";
import { standingOf } from "../../core/positions/index.ts";
import { readSituations } from "../../core/readings/index.ts";
import { addressesOf, randomCircuit } from "../laws/random-circuits.ts";
import { drawingOf, type Setting } from "./oracle/drawing.ts";
import type { Load } from "./oracle/element.ts";
import { faultsOf } from "./oracle/fault.ts";
import { guardsOf } from "./oracle/guard.ts";
import { hasLooseFrame, heatOf, isShorted, standsOf } from "./oracle/hot.ts";
import { operatingPoint } from "./oracle/operating-point.ts";

/** Drawings looked at; set RUNS for a longer look. */
const RUNS = Number(process.env["RUNS"] ?? 80);
/** A busy machine is no reason to fail. */
const PATIENCE_MS = Math.max(120_000, RUNS * 300);

/** Lines that say where two readings differ. */
class Differences {
  readonly lines: string[] = [];

  say(what: string, got: unknown, wanted: unknown): void {
    this.lines.push(`${what}: got ${JSON.stringify(got)}, the second reading says ${JSON.stringify(wanted)}`);
  }

  /** Equal within `part` of it, or both `null`. */
  near(what: string, got: number | null, wanted: number | null, part = 1e-6): void {
    const alike =
      got === null || wanted === null
        ? got === wanted
        : Math.abs(got - wanted) <= part * Math.max(1, Math.abs(got), Math.abs(wanted));
    if (!alike) this.say(what, got, wanted);
  }
}

function readingDifferences(document: Document): string[] {
  const drawing = drawingOf(document, addressesOf(document.parts));
  const found = new Differences();
  for (const situation of readSituations(buildNetlist(document))) {
    const set: Setting = document.situations?.find(({ id }) => id === situation.id)?.set ?? {};
    const point = operatingPoint(drawing, set);
    if (point.unsure) continue;
    if (situation.settled !== point.settled) found.say(situation.id, situation.solution.status, point.settled);
    if (!situation.settled || !point.settled) continue;
    // A frame that only idle loads tie to the rest is held by picosiemens: its amps' rounding shows there.
    const isLoose = hasLooseBattery(document);
    for (const [terminal, volts] of point.volts)
      if (!isLoose) found.near(terminal, situation.terminals[terminal]!.volts, volts);
    for (const [wire, amps] of point.wireA) found.near(wire, situation.wires[wire]!.amps, amps);
    drawing.elements.forEach((element, at) => {
      const part = situation.parts[element.of]!;
      const amps = point.amps[at]!;
      if (element.type === "fuse" && part.ways === undefined) found.near(`${element.of} amps`, part.amps!, amps);
      if (element.type === "fuse" && part.ways)
        found.near(element.name, part.ways[element.name.split(".")[1]!]!.amps, amps);
      if (element.type === "source") found.near(`${element.of} delivers`, part.amps!, -amps);
      if (element.type !== "load" || part.on === undefined) return;
      found.near(`${element.of} amps`, part.amps!, amps);
      const wanted = isOn(document, element, amps, point.volts);
      if (wanted !== null && part.on !== wanted) found.say(`${element.of} on`, part.on, wanted);
    });
    for (const [relay, pulledIn] of point.pulledIn) {
      if (situation.parts[relay]!.pulledIn !== pulledIn) found.say(relay, !pulledIn, pulledIn);
    }
  }
  return found.lines;
}

/** Reading 11; `null` so near the edge that rounding decides. */
function isOn(
  { parts, system }: Document,
  { of, a, b, law, amount, ratedV }: Load,
  amps: number,
  volts: ReadonlyMap<string, number | null>,
): boolean | null {
  const part = parts.find(({ id }) => id === of)!;
  if (part.kind === "lamp" && part.props?.["type"] !== "filament") return amps !== 0;
  const [va, vb] = [volts.get(a), volts.get(b)];
  if (part.kind === "lamp") {
    const share = va == null || vb == null ? 0 : Math.abs(va - vb) / (ratedV / 4);
    return Math.abs(share - 1) < 1e-6 ? null : share > 1;
  }
  const statedV = typeof part.props?.["ratedV"] === "number" ? part.props["ratedV"] : (system?.nominalV ?? 12);
  if (law === "idle") return false;
  const statedA = law === "current" ? amount : law === "resistor" ? statedV / amount : amount / statedV;
  const share = Math.abs(amps) / (0.05 * statedA);
  return Math.abs(share - 1) < 1e-6 ? null : share > 1;
}

function standingDifferences(document: Document): string[] {
  const drawing = drawingOf(document, addressesOf(document.parts));
  const found = new Differences();
  const standing = standingOf(buildNetlist(document));
  const stands = standsOf(drawing);
  if (stands?.some(({ point }) => !point.settled)) return [];
  // With a source shorted by some switch nobody asks what is hot besides, and closed contacts no longer only add to a fault.
  if (stands && !stands.some((stand) => isShorted(drawing, stand))) {
    const heat = heatOf(drawing, stands);
    // Where frames are apart in some position, closing a contact can lessen a fault, and what one does hangs on the other's controls.
    const isApart = stands.some((stand) => hasLooseFrame(drawing, stand));
    if (isApart && document.parts.some(({ kind }) => kind === "converter")) return [];
    // Past this many positions groups are taken apart, and what joins their pieces through rails is told within a percent only.
    const isLarge = stands.length > 32;
    const faults = isApart || isLarge || hangsOnEngine(document) ? null : faultsOf(drawing, stands, heat);
    drawing.terminals.forEach((terminal, at) => {
      const got = standing.terminals[at]!;
      const wanted = heat.get(terminal)!;
      if (got.hot !== wanted.hot || got.via !== wanted.via)
        found.say(terminal, { hot: got.hot, via: got.via, when: got.when }, wanted);
      else if (faults) found.near(`${terminal} faultA`, got.faultA, faults.get(terminal)!, 1e-4);
    });
  }
  const guards = guardsOf(drawing);
  document.wires.forEach(({ id }, at) => {
    const wanted = guards?.get(id);
    if (!wanted) return;
    const { guard, unguardedM } = standing.wires[at]!;
    const same = guard && wanted.guard ? guard.ratingA === wanted.guard.ratingA : guard === wanted.guard;
    if (!same) found.say(`${id} guard`, guard, wanted.guard);
    else found.near(`${id} unguardedM`, unguardedM, wanted.unguardedM);
  });
  return found.lines;
}

function hasLooseBattery({ parts }: Document): boolean {
  return parts.some(({ props }) => props?.["chassisBondMilliohm"] === null);
}

/** Several relays pull in with the engine only: groups then share a control, and how they stand together is overstated. */
function hangsOnEngine({ parts }: Document): boolean {
  return parts.filter(({ props }) => props?.["pullInV"] === 13).length > 1;
}

describe("a second reading of the contract agrees on random circuits", () => {
  test(
    "volts, amps and relays",
    () => {
      fc.assert(
        fc.property(randomCircuit({ chains: { min: 1, max: 4 }, strays: 2, unknowns: false }), (document) => {
          expect(readingDifferences(document)).toEqual([]);
        }),
        { numRuns: RUNS },
      );
    },
    PATIENCE_MS,
  );

  test(
    "hot metal, guards and fault currents",
    () => {
      fc.assert(
        fc.property(randomCircuit({ chains: { min: 1, max: 3 }, strays: 2, unknowns: false }), (document) => {
          expect(standingDifferences(document)).toEqual([]);
        }),
        { numRuns: RUNS },
      );
    },
    PATIENCE_MS,
  );
});
