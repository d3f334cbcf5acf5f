import { ampsThrough, voltsBetween } from "../readings/index.ts";
import { holdsForS } from "../reference/index.ts";
import { formatQuantity } from "../units/index.ts";
import { lessDrop } from "./remedies/less-drop.ts";
import { fuseOfAtLeast } from "./remedies/fuse-choice.ts";
import { largerDevice } from "./remedies/rerate-device.ts";
import { defineRule, type Finding, type Study } from "./rule.ts";
import { deviceId, elementsOf, partId, type ElementOf } from "./study/elements.ts";
import { isOver, isUnder } from "./study/limits.ts";
import { startsOf, type Start } from "./study/starts.ts";
import { amount, nameOf, situationOf } from "./study/words.ts";

/** A device without published times is taken to hold twice its rating for a start (blade fuses hold it 0.15 s at least). */
const HOLDS_MULTIPLE = 2;

export const startSurge = defineRule({
  id: "start-surge",
  level: "fix",
  about: "The moment a motor starts may blow its fuse, leave it too few volts to start, or let a relay go.",
  source: "Fuse makers' shortest operating times; the parts' own least volts",
  check(study) {
    const found = new Map<string, Finding>();
    for (const start of startsOf(study)) {
      for (const one of [...devices(study, start), ...sagging(study, start), ...relays(study, start)]) {
        const key = `${one.at.join()} ${one.measure["why"]}`;
        if (!found.has(key)) found.set(key, one);
      }
    }
    return [...found.values()];
  },
  say(finding, study) {
    const { why } = finding.measure;
    const starts = `${nameOf(study, finding.at[0]!)} starts ${situationOf(finding, study)}`;
    if (why === "sags") {
      return `As ${starts} it gets only ${amount(finding, "startVolts", "V")} and needs ${amount(finding, "minV", "V")}: it may not start.`;
    }
    const other = nameOf(study, finding.at[1]!);
    if (why === "lets-go") {
      return `As ${starts}, the coil of ${other} sinks to ${amount(finding, "coilV", "V")} and lets go.`;
    }
    const surge = `As ${starts}, ${amount(finding, "startA", "A")} run through ${other} (${amount(finding, "ratingA", "A")})`;
    return finding.level
      ? `${surge}; enter how long the start lasts to see whether it holds.`
      : `${surge}: it may blow though nothing is wrong.`;
  },
});

function devices(study: Study, { use, situation, solution }: Start): Finding[] {
  const seconds = use.spec.start?.seconds ?? null;
  return elementsOf(study.netlist, "protection").flatMap((device): Finding[] => {
    const { ratingA } = device.spec;
    const startA = Math.abs(ampsThrough(solution, device));
    const runningA = Math.abs(ampsThrough(situation.solution, device));
    if (ratingA === null || !isOver(startA, ratingA) || !isOver(startA, runningA)) return [];
    if (holds(device.spec.gates, ratingA, startA, seconds)) return [];
    const isUnknown = seconds === null && !isOver(startA, HOLDS_MULTIPLE * ratingA);
    const holdsS = holdsForS(device.spec.gates, ratingA, startA);
    return [
      {
        ...(isUnknown ? { level: "cant-check" } : {}),
        at: [partId(use), deviceId(device)],
        measure: { why: "opens", startA, ratingA, startS: seconds, holdsS, situation: situation.id },
        remedies: [...slower(study, device, ratingA, startA, seconds), ...larger(study, device, startA, seconds)],
      },
    ];
  });
}

/** Surely carries the start: for as long as it lasts, or, where no times are published, up to twice its rating. */
function holds(body: string | null, ratingA: number, startA: number, seconds: number | null): boolean {
  if (!isOver(startA, ratingA)) return true;
  const holdsS = holdsForS(body, ratingA, startA);
  return holdsS === null ? !isOver(startA, HOLDS_MULTIPLE * ratingA) : seconds !== null && !isOver(seconds, holdsS);
}

/** The smallest larger fuse that carries the start. */
function larger(study: Study, device: ElementOf<"protection">, startA: number, seconds: number | null) {
  for (let fuse = fuseOfAtLeast(device.spec.ratingA! * 1.01); fuse; fuse = fuseOfAtLeast(fuse.ratingA * 1.01)) {
    if (holds(fuse.body, fuse.ratingA, startA, seconds)) return largerDevice(study, deviceId(device), fuse.ratingA);
  }
  return [];
}

/** The same rating in a body that takes the start, where one is sold. */
function slower(
  study: Study,
  device: ElementOf<"protection">,
  ratingA: number,
  startA: number,
  seconds: number | null,
) {
  const holdsS = holdsForS("maxi-blade", ratingA, startA);
  const isEnough = seconds !== null && holdsS !== null && holdsS >= seconds;
  if (!isEnough || device.spec.gates === "maxi-blade" || !("body" in device.part.settings)) return [];
  const text = `Fit ${formatQuantity(ratingA, "A")} in the slower maxi body in ${nameOf(study, deviceId(device))}`;
  return [
    {
      id: "slower-fuse",
      text,
      edits: [{ op: "set-props" as const, id: partId(device), change: { body: "maxi-blade" } }],
    },
  ];
}

function sagging(study: Study, { use, situation, solution }: Start): Finding[] {
  const { minV } = use.spec;
  const volts = voltsBetween(solution, use.a, use.b);
  if (minV === null || volts === null || !isUnder(Math.abs(volts), minV)) return [];
  const measure = { why: "sags", startVolts: Math.abs(volts), minV, situation: situation.id };
  const started = { ...situation, solution };
  return [{ at: [partId(use)], measure, remedies: lessDrop(study, use, started, minV - Math.abs(volts)) }];
}

/** Pulled in while it runs, under its drop-out volts as it starts. */
function relays(study: Study, { use, situation, solution }: Start): Finding[] {
  return elementsOf(study.netlist, "coil").flatMap((coil): Finding[] => {
    const coilV = Math.abs(voltsBetween(solution, coil.a, coil.b) ?? 0);
    if (situation.solution.pulledIn[coil.relay] !== 1 || !isUnder(coilV, coil.spec.dropOutV)) return [];
    const measure = { why: "lets-go", coilV, dropOutV: coil.spec.dropOutV, situation: situation.id };
    return [{ at: [partId(use), partId(coil)], measure, remedies: [] }];
  });
}
