import { battery } from "./battery.ts";
import { breaker } from "./breaker.ts";
import { busBar } from "./bus-bar.ts";
import { changeoverSwitch } from "./changeover-switch.ts";
import { chassis } from "./chassis.ts";
import { converter } from "./converter.ts";
import { custom } from "./custom.ts";
import { diode } from "./diode.ts";
import { factoryFeed } from "./factory-feed.ts";
import { fuseBlock } from "./fuse-block.ts";
import { fuse } from "./fuse.ts";
import { groundStrip } from "./ground-strip.ts";
import { keySwitch } from "./key-switch.ts";
import { lamp } from "./lamp.ts";
import { load } from "./load.ts";
import { motor } from "./motor.ts";
import type { PartKind } from "./part-kind.ts";
import { plug } from "./plug.ts";
import { relay } from "./relay.ts";
import { resistor } from "./resistor.ts";
import { splice } from "./splice.ts";
import { onOffSwitch } from "./switch.ts";

/** Every kind of part, in the order of the Shelf. To add a kind: its file, and its line here. */
export const partKinds: readonly PartKind[] = [
  battery,
  factoryFeed,
  converter,
  fuse,
  breaker,
  fuseBlock,
  onOffSwitch,
  changeoverSwitch,
  keySwitch,
  relay,
  diode,
  lamp,
  load,
  motor,
  resistor,
  custom,
  groundStrip,
  chassis,
  busBar,
  splice,
  plug,
];

const byKind = new Map(partKinds.map((kind) => [kind.kind, kind]));

/** The kind of that name; `undefined` when no such kind is known. */
export function kindOf(kind: string): PartKind | undefined {
  return byKind.get(kind);
}

/**
 * Kinds that answer to what a person typed, best first: each word must begin a word of the kind's title, name or trade words.
 * Nothing typed: every kind, in Shelf order. Nothing found: empty.
 */
export function findKinds(typed: string): readonly PartKind[] {
  const wanted = wordsIn(typed);
  if (wanted.length === 0) return partKinds;
  return partKinds
    .map((kind) => ({ kind, score: score(kind, wanted) }))
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score)
    .map(({ kind }) => kind);
}

/** Words of one trade name beat words scattered over several; a whole word beats a beginning; the title beats other names. */
function score(kind: PartKind, wanted: readonly string[]): number {
  const names = [kind.title, kind.kind, ...kind.words].map(wordsIn);
  const together = Math.max(...names.map((name, at) => nameScore(name, wanted) * (at < 2 ? 1.5 : 1)));
  if (together > 0) return 10 * together;
  return nameScore(names.flat(), wanted);
}

function nameScore(name: readonly string[], wanted: readonly string[]): number {
  let total = 0;
  for (const word of wanted) {
    const whole = name.includes(word);
    if (!whole && !name.some((own) => own.startsWith(word))) return 0;
    total += whole ? 1 : 0.5;
  }
  return total / (total + name.length - wanted.length + 1);
}

function wordsIn(text: string): readonly string[] {
  return text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
}
