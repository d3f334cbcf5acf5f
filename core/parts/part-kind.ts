import type { Cover } from "../document/index.ts";
import type { Box, Point, Stroke } from "../geometry/index.ts";
import type { Element } from "./elements.ts";
import type { PartFacts } from "./facts.ts";
import type { Setting } from "./setting.ts";

/** What a wire is made fast to here: decides how many may share it and which wire end fits. */
export type Fixing = "stud" | "ground-screw" | "tab" | "contact" | "lead" | "joint";

export interface Terminal {
  /** As marked on the real part. */
  readonly name: string;
  /** Whole grid steps from the part's origin, unturned. */
  readonly at: Point;
  /** The side a wire leaves towards, unturned. */
  readonly exit: "left" | "right" | "up" | "down";
  /** A joint of bare conductors: a wire may leave on any side. */
  readonly anyExit?: true;
  /** What holds when the person said nothing about its cover. */
  readonly cover: { readonly wired: Cover; readonly unwired: Cover };
  readonly fixing: Fixing;
  /** In words for the outline and the Card: "contact, on at rest". */
  readonly about: string;
}

/** How a symbol stands at this moment, for drawing only. Missing: as at rest. */
export interface Pose {
  readonly position?: string;
  readonly pulledIn?: boolean;
  readonly on?: boolean;
}

export interface Control {
  /** First is the rest position and is called "off". */
  readonly positions: readonly string[];
  /** Springs back to rest when let go. */
  readonly momentary: boolean;
  /** What operates it, for the Controls: "switch", "key", "vehicle signal". */
  readonly noun: string;
}

/** What `model` may know beyond the part's own settings. */
export interface Surroundings {
  readonly nominalV: 12 | 24;
  /** A source whose negative terminal is joined by wires alone to the positive of another (the upper one of a series pair). */
  readonly seriesUpper: boolean;
}

/** What of a part's settings can't be used: the key under its props, what stands there, and what was wanted, in words. */
export interface Fault {
  readonly key: string;
  readonly got: unknown;
  readonly wanted: string;
}

/**
 * A kind of part: everything the rest of the program knows about it. One file per kind; `index.ts` lists them.
 * `S` is the record of resolved settings (defaults filled in, unknown as `null`).
 */
export interface PartKind<S = Record<string, unknown>> {
  readonly kind: string;
  /** What the trade calls it. */
  readonly title: string;
  /** Other words people search for, lower case. */
  readonly words: readonly string[];
  readonly shelf: "sources" | "protection" | "switching" | "loads" | "grounds" | "joints";
  /** Ids on the drawing start with this letter, lower case in ids, upper case in labels. */
  readonly letter: string;
  /** One sentence for the Shelf and the help page. */
  readonly about: string;
  readonly settings: { readonly [K in keyof S]: Setting<S[K]> };
  /** The first thing wrong between settings that are each right by themselves; `null`: nothing. */
  check?(settings: S): Fault | null;
  /** Settings a part dropped from the Shelf starts with, where the vehicle's volts or a new part's unknowns ask for them. */
  fresh?(nominalV: 12 | 24): Readonly<Record<string, unknown>>;
  terminals(settings: S): readonly Terminal[];
  symbol(settings: S, pose: Pose): readonly Stroke[];
  /** Extent of the symbol's own drawing, terminals included, labels excluded. */
  bounds(settings: S): Box;
  control?(settings: S): Control | null;
  model(settings: S, surroundings: Surroundings): readonly Element[];
  facts?(settings: S): PartFacts;
  /**
   * The change of settings that gives the device or contact at `terminal` ("" where the part has but one device) this rating, for
   * remedies and Size it. Absent: nothing in the part is chosen by its rating.
   */
  rerate?(settings: S, terminal: string, ratingA: number): Readonly<Record<string, unknown>>;
  /** Words printed beside the symbol under its label: "10 A", "50 W". Empty for none. */
  caption(settings: S, surroundings: Surroundings): string;
}

/** Registers `S` from the settings record, so that `model` and `symbol` are typed by it. */
export function definePart<S>(kind: PartKind<S>): PartKind {
  return kind as unknown as PartKind;
}
