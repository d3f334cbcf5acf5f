import type { Element, Load } from "./elements.ts";
import { fuseOhm } from "./fuse.ts";
import { loadAmps, loadVolts, milliohms, ohms, ratedVolts, ratingAmps, volts, watts } from "./limits.ts";
import { choice, flag, quantity, rating, type Setting } from "./setting.ts";
import { plainUse, statedAmps } from "./use.ts";

/**
 * Plain elements a person puts a symbol of their own together from. Each form names its ends, its settings with their usual
 * values, and makes the element of it. Ends are terminals of the symbol, nodes inside it (`$` and letters), or `$chassis`.
 */
interface ElementForm<S> {
  readonly label: string;
  readonly ends: readonly string[];
  readonly settings: { readonly [K in keyof S]: Setting<S[K]> };
  make(ends: Ends, settings: S, moved: Moved, nominalV: 12 | 24): Element | null;
}

type Ends = (name: string) => string;

/** What the record says besides ends and settings: the name of a coil, and what moves a contact. */
export interface Moved {
  readonly name?: string | undefined;
  readonly positions?: readonly string[] | undefined;
  readonly coil?: string | undefined;
}

function form<S>(spec: ElementForm<S>): ElementForm<Record<string, unknown>> {
  return spec as unknown as ElementForm<Record<string, unknown>>;
}

const contactOhm = quantity("Resistance", "mohm", 5, { ...milliohms, help: "While it is closed." });
const limit = { ...ratingAmps, help: "Most amps it may carry." };

export const elementForms = {
  link: form({
    label: "Conductor",
    ends: ["a", "b"],
    settings: {
      milliohm: quantity("Resistance", "mohm", 0, { ...milliohms, help: "From end to end; 0 for one piece of metal." }),
    },
    make: (end, { milliohm }) => ({ type: "link", a: end("a"), b: end("b"), ohm: milliohm / 1000 }),
  }),
  source: form({
    label: "Source",
    ends: ["plus", "minus"],
    settings: {
      restV: quantity("Volts at rest", "V", 12.6, { ...volts, help: "With the engine off." }),
      runningV: quantity("Volts while running", "V", 13.8, { ...volts, help: "With the engine running." }),
      milliohm: quantity("Resistance", "mohm", 20, { ...milliohms, help: "Inside the source." }),
      fused: flag("Has its own fuse", false, "It is fused inside."),
      fuseA: rating("Own fuse", "A", limit),
    },
    make: (end, { restV, runningV, milliohm, fused, fuseA }, { positions }) => ({
      type: "source",
      plus: end("plus"),
      minus: end("minus"),
      restV,
      runningV,
      ohm: milliohm / 1000,
      when: positions ?? null,
      zero: false,
      ...(fused ? { fuseA } : {}),
    }),
  }),
  protection: form({
    label: "Fuse or breaker",
    ends: ["a", "b"],
    settings: {
      ratingA: rating("Rating", "A", limit),
      milliohm: rating("Resistance", "mohm", {
        ...milliohms,
        help: "Cold.",
        follows: "the usual resistance for its rating",
      }),
      closed: flag("Closed", true, "Off: pulled or tripped."),
      recloses: flag("Breaker", false, "It trips and can close again."),
    },
    make: (end, { ratingA, milliohm, closed, recloses }) => ({
      type: "protection",
      a: end("a"),
      b: end("b"),
      ohm: fuseOhm(milliohm, ratingA),
      ratingA,
      closed,
      recloses,
      terminal: "",
      gates: null,
      holderA: null,
    }),
  }),
  contact: form({
    label: "Contact",
    ends: ["a", "b"],
    settings: {
      milliohm: contactOhm,
      ratedA: rating("Rating", "A", limit),
      closedWhen: choice("Closed while the coil is", "pulled-in", "Of a contact that a coil moves.", [
        { value: "pulled-in", label: "Pulled in" },
        { value: "released", label: "Released" },
      ]),
    },
    make: (end, { milliohm, ratedA, closedWhen }, { positions, coil }) => ({
      type: "contact",
      a: end("a"),
      b: end("b"),
      ohm: milliohm / 1000,
      movedBy: coil === undefined ? { positions: positions ?? [] } : { coil, closedWhen },
      ratedA,
    }),
  }),
  coil: form({
    label: "Coil",
    ends: ["a", "b"],
    settings: {
      ohm: quantity("Resistance", "ohm", 90, { ...ohms, help: "Across the coil." }),
      pullInV: quantity("Pulls in at", "V", 7.5, { min: 0.1, max: 500, help: "Volts from which it surely switches." }),
      dropOutV: quantity("Drops out below", "V", 1.5, { ...loadVolts, help: "Volts below which it surely lets go." }),
      maxV: rating("Maximum", "V", {
        min: 0.1,
        max: 1000,
        help: "Most volts it stands.",
        follows: "2.1 times the pull-in volts",
      }),
      suppressed: flag("Suppressed", false, "Its spike is tamed inside."),
    },
    make: (end, { ohm, pullInV, dropOutV, maxV, suppressed }, { name }) => ({
      type: "coil",
      name: name ?? "coil",
      a: end("a"),
      b: end("b"),
      ohm,
      pullInV,
      dropOutV,
      maxV: maxV ?? 2.1 * pullInV,
      suppression: suppressed ? "resistor" : "none",
    }),
  }),
  diode: form({
    label: "Diode",
    ends: ["a", "k"],
    settings: {
      forwardV: quantity("Forward volts", "V", 0.7, { min: 0, max: 20, help: "Lost across it while it conducts." }),
      milliohm: quantity("Resistance", "mohm", 10, { ...milliohms, help: "Added with rising amps." }),
      ratedA: rating("Rating", "A", limit),
    },
    make: (end, { forwardV, milliohm, ratedA }) => ({
      type: "diode",
      a: end("a"),
      k: end("k"),
      forwardV,
      ohm: milliohm / 1000,
      ratedA,
    }),
  }),
  load: form({
    label: "Load",
    ends: ["a", "b"],
    settings: {
      law: choice("Behaves as", "resistor", "How its current follows the volts it gets.", [
        { value: "resistor", label: "Resistance" },
        { value: "filament", label: "Filament lamp" },
        { value: "current", label: "Same amps at any volts" },
        { value: "power", label: "Same watts at any volts" },
      ]),
      ohm: rating("Resistance", "ohm", { ...ohms, help: "Of a resistance; or give its watts." }),
      watts: rating("Power", "W", { ...watts, help: "At its rated volts." }),
      amps: rating("Current", "A", { ...loadAmps, help: "Of one that takes the same amps at any volts." }),
      ratedV: rating("Rated volts", "V", {
        ...ratedVolts,
        help: "Volts its watts are stated at.",
        follows: "the system's volts",
      }),
      minV: rating("Works from", "V", { ...loadVolts, help: "Least volts it works at." }),
      maxV: rating("Up to", "V", { ...loadVolts, help: "Most volts it stands." }),
      polarised: flag("Polarity matters", true, "Swapping its ends stops or harms it."),
      continuous: flag("Runs for long", true, "On for minutes or more."),
      mustBeOffAtRest: flag("Off at rest", false, "It is meant to be off with everything switched off."),
    },
    make: (end, settings, _, nominalV) => loadOf(end, settings, settings.ratedV ?? nominalV),
  }),
  converter: form({
    label: "Converter",
    ends: ["inPlus", "inMinus", "outPlus", "outMinus"],
    settings: {
      outV: quantity("Output volts", "V", 12, { ...ratedVolts, help: "What it gives out." }),
      maxA: rating("Output limit", "A", limit),
      efficiency: quantity("Efficiency", "", 0.85, {
        min: 0.01,
        max: 1,
        help: "Part of the watts taken that it gives out.",
      }),
    },
    make: (end, { outV, maxA, efficiency }) => ({
      type: "converter",
      inPlus: end("inPlus"),
      inMinus: end("inMinus"),
      outPlus: end("outPlus"),
      outMinus: end("outMinus"),
      outV,
      maxA,
      efficiency,
    }),
  }),
};

interface CustomLoad {
  readonly law: "resistor" | "filament" | "current" | "power";
  readonly ohm: number | null;
  readonly watts: number | null;
  readonly amps: number | null;
  readonly minV: number | null;
  readonly maxV: number | null;
  readonly polarised: boolean;
  readonly continuous: boolean;
  readonly mustBeOffAtRest: boolean;
}

function loadOf(end: Ends, settings: CustomLoad, ratedV: number): Load {
  const { law, ohm, watts, amps, polarised, minV, maxV, continuous, mustBeOffAtRest } = settings;
  const draws = {
    resistor: { law: "resistor", ohm: ohm ?? (watts === null ? null : ratedV ** 2 / watts) },
    filament: { law: "filament", watts, ratedV },
    current: { law: "current", amps },
    power: { law: "power", watts, opens: null },
  } as const;
  const byOhms = law === "resistor" && ohm !== null ? ratedV / ohm : statedAmps(watts, ratedV);
  return {
    ...plainUse,
    a: end("a"),
    b: end("b"),
    draw: draws[law],
    ratedV,
    minV,
    maxV,
    polarised,
    conductsReversed: law === "resistor" || law === "filament" || !polarised,
    continuous,
    mustBeOffAtRest,
    onWhen: law === "filament" ? { voltsFraction: 0.25 } : { ampsFraction: 0.05 },
    statedA: law === "current" ? amps : byOhms,
    noun: "load",
  };
}
