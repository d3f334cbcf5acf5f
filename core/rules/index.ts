import { alternatorOver } from "./alternator-over.ts";
import { autoReset } from "./auto-reset.ts";
import { backfeed } from "./backfeed.ts";
import { barrelMisfit } from "./barrel-misfit.ts";
import { blockSum } from "./block-sum.ts";
import { cantCheck } from "./cant-check.ts";
import { coilUnsuppressed } from "./coil-unsuppressed.ts";
import { coilWeak } from "./coil-weak.ts";
import { contactOverload } from "./contact-overload.ts";
import { diodeBackwards } from "./diode-backwards.ts";
import { dropHigh } from "./drop-high.ts";
import { factoryFeedLoad } from "./factory-feed-load.ts";
import { fuseBlows } from "./fuse-blows.ts";
import { fuseFar } from "./fuse-far.ts";
import { fuseLoaded } from "./fuse-loaded.ts";
import { fuseOverWire } from "./fuse-over-wire.ts";
import { groundDrop } from "./ground-drop.ts";
import { hotBare } from "./hot-bare.ts";
import { labelMissing } from "./label-missing.ts";
import { livePins } from "./live-pins.ts";
import { looseEnd } from "./loose-end.ts";
import { lostGround } from "./lost-ground.ts";
import { midTap } from "./mid-tap.ts";
import { neverOff } from "./never-off.ts";
import { noFuse } from "./no-fuse.ts";
import { noReturn } from "./no-return.ts";
import { onAtRest } from "./on-at-rest.ts";
import { piercingTap } from "./piercing-tap.ts";
import { plugFunction } from "./plug-function.ts";
import { plugOverload } from "./plug-overload.ts";
import { pulsedTrigger } from "./pulsed-trigger.ts";
import { relayChatter } from "./relay-chatter.ts";
import { relayMiswired } from "./relay-miswired.ts";
import { restDrain } from "./rest-drain.ts";
import { returnSmall } from "./return-small.ts";
import { reverseVolts } from "./reverse-volts.ts";
import { sensorBypassed } from "./sensor-bypassed.ts";
import { short } from "./short.ts";
import { startSurge } from "./start-surge.ts";
import { studCrowded } from "./stud-crowded.ts";
import { twoFeeds } from "./two-feeds.ts";
import { underRated } from "./under-rated.ts";
import { unmeasured } from "./unmeasured.ts";
import { weakFault } from "./weak-fault.ts";
import { wireOverload } from "./wire-overload.ts";
import { wrongVoltage } from "./wrong-voltage.ts";
import type { Level, Rule, Snag, Study } from "./rule.ts";

export * from "./rule.ts";

/**
 * Every rule, in the order they are told among equals. To add a rule: its file, and its line here.
 *
 * Levels, by what happens when the drawing is built and powered as it is:
 *
 *   stop        fire, burns or damage: short, no-fuse, fuse-over-wire, wire-overload, diode-backwards; bare metal that is live by a
 *               direct way (hot-bare); electronics fed backwards (reverse-volts) or over their volts (wrong-voltage); relays that
 *               never settle (relay-chatter), because nothing can be said of them
 *   fix         it works wrongly or will fail: every other rule with an effect
 *   advice      it works, and could be better: auto-reset, lost-ground, two-feeds, ground-drop, rest-drain, piercing-tap,
 *               label-missing, drop-high up to the fault limit, loose ends that are never live, mains that are unfused, far from
 *               their fuse or overloaded for moments by design
 *   cant-check  something is missing: cant-check and unmeasured; coil-unsuppressed, pulsed-trigger, factory-feed-load, no-return,
 *               live-pins and start-surge where the answer they need is not there
 */
export const rules: readonly Rule[] = [
  short,
  noFuse,
  fuseFar,
  fuseOverWire,
  hotBare,
  livePins,
  wireOverload,
  fuseLoaded,
  fuseBlows,
  underRated,
  contactOverload,
  weakFault,
  autoReset,
  factoryFeedLoad,
  pulsedTrigger,
  diodeBackwards,
  coilUnsuppressed,
  wrongVoltage,
  midTap,
  reverseVolts,
  relayMiswired,
  relayChatter,
  coilWeak,
  backfeed,
  onAtRest,
  neverOff,
  lostGround,
  noReturn,
  twoFeeds,
  dropHigh,
  groundDrop,
  returnSmall,
  startSurge,
  blockSum,
  restDrain,
  barrelMisfit,
  studCrowded,
  plugOverload,
  plugFunction,
  sensorBypassed,
  alternatorOver,
  piercingTap,
  looseEnd,
  labelMissing,
  unmeasured,
  cantCheck,
];

const WORST_FIRST: readonly Level[] = ["stop", "fix", "cant-check", "advice"];

/** Everything wrong with a drawing, worst first; of one level in the order of the rules, then of the drawing. */
export function applyRules(study: Study, chosen: readonly Rule[] = rules): Snag[] {
  const snags = chosen.flatMap((rule) =>
    rule.check(study).map((finding): Snag => ({
      rule: rule.id,
      level: finding.level ?? rule.level,
      at: finding.at,
      measure: finding.measure,
      text: sentence(rule.say(finding, study)),
      remedies: finding.remedies,
    })),
  );
  return snags.toSorted((one, other) => WORST_FIRST.indexOf(one.level) - WORST_FIRST.indexOf(other.level));
}

/** A sentence that begins with the name of a place begins with a capital all the same. */
function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
