import { studyOf } from "../analyse.ts";
import { applyEdits, splitAddress, type Document, type Edit, type System } from "../document/index.ts";
import type { NetElement, NetWire } from "../netlist/index.ts";
import type { Protection } from "../parts/index.ts";
import { nextRatingA, soldWireSizes, wireAreaMm2 } from "../reference/index.ts";
import type { Snag, Study } from "../rules/index.ts";
import { parseWireSize } from "../units/index.ts";
import { sizingSnags } from "./sizing-snags.ts";

/** What Size it may change: everything, or the wires and parts named. Never a value the person marked as fixed. */
export type Scope = "all" | ReadonlySet<string>;

/**
 * The drawing as sized so far. Changes are tried on it and kept or dropped; each change that stays has its reason noted with the
 * wire or part it concerns.
 */
export class Draft {
  document: Document;
  study: Study;
  readonly reasons = new Map<string, string>();
  private readonly scope: Scope;
  private expected = new Set<string>();

  constructor(document: Document, scope: Scope) {
    this.document = document;
    this.scope = scope;
    this.study = studyOf(document);
  }

  /** Takes the edits over and looks at the drawing afresh. */
  apply(edits: readonly Edit[]): void {
    this.document = applyEdits(this.document, edits);
    this.study = studyOf(this.document);
  }

  /** From here on a load that is on now and goes off is a snag like any other: its wires starve it. */
  expectLoadsAsNow(): void {
    this.expected = this.loadsOn();
  }

  /** Sizing snags, and loads that thinner wires have put out. */
  snags(): Snag[] {
    const on = this.loadsOn();
    const starved = [...this.expected].filter((load) => !on.has(load)).map((load) => load.slice(load.indexOf(" ") + 1));
    return [...sizingSnags(this.study), ...[...new Set(starved)].map(starvedSnag)];
  }

  private loadsOn(): Set<string> {
    return new Set(
      this.study.situations.flatMap(({ id, parts }) =>
        Object.entries(parts).flatMap(([part, reading]) => (reading.on === true ? [`${id} ${part}`] : [])),
      ),
    );
  }

  note(id: string, reason: string): void {
    this.reasons.set(id, reason);
  }

  /** Wires whose size may be chosen. An unfused main by design has no device to be sized by, and stays. */
  get wires(): readonly NetWire[] {
    return this.study.netlist.wires.filter(
      ({ wire }) => wire.main === undefined && this.isFree(wire.id, wire.fixed, "size"),
    );
  }

  /** Devices whose rating may be chosen. */
  get devices(): readonly NetElement<Protection>[] {
    return this.study.netlist.elements.filter((element): element is NetElement<Protection> => {
      const { spec, part } = element;
      return (
        spec.type === "protection" &&
        part.kind.rerate !== undefined &&
        this.isFree(part.part.id, part.part.fixed, "rating")
      );
    });
  }

  /** Whether every edit only changes sizes or settings of things that are free. */
  allows(edits: readonly Edit[]): boolean {
    const { wireAt, partAt } = this.study.netlist;
    return edits.every((edit) => {
      if (edit.op === "set-wire") {
        const keys = Object.keys(edit.change);
        return keys.every((key) => key === "size") && this.isFree(edit.id, wireAt.get(edit.id)?.wire.fixed, "size");
      }
      return edit.op === "set-props" && this.isFree(edit.id, partAt.get(edit.id)?.part.fixed, "rating");
    });
  }

  private isFree(id: string, fixed: readonly string[] | undefined, what: string): boolean {
    return (this.scope === "all" || this.scope.has(id)) && fixed?.includes(what) !== true;
  }
}

function starvedSnag(part: string): Snag {
  return {
    rule: "drop-high",
    level: "fix",
    at: [part],
    measure: {},
    text: "Too few volts reach it to work.",
    remedies: [],
  };
}

/** Sizes sold, thinnest first, in the system a wire is given in; the drawing's own for a wire without a size. */
export function sizesFor(system: System, size: string | undefined): readonly string[] {
  const parsed = size === undefined ? null : parseWireSize(size);
  return soldWireSizes(parsed?.ok ? parsed.value.system : system.sizes);
}

/** The size next to this wire's by steps: 1 thicker, -1 thinner; `null` where none is sold. Of a wire without a size: the thinnest. */
export function sizeBeside(draft: Draft, { wire }: NetWire, steps: 1 | -1): string | null {
  const sold = sizesFor(draft.study.netlist.system, wire.size);
  if (wire.size === undefined) return sold[0] ?? null;
  const areaMm2 = wireAreaMm2(wire.size) ?? 0;
  if (steps === 1) return sold.find((size) => (wireAreaMm2(size) ?? 0) > areaMm2 * 1.001) ?? null;
  return sold.findLast((size) => (wireAreaMm2(size) ?? 0) < areaMm2 * 0.999) ?? null;
}

/** The rating sold next above `atLeastA` in this device's body, as the edit that gives it; `null` when none is. */
export function rerating({ part, spec }: NetElement<Protection>, atLeastA: number): Edit | null {
  const ratingA = nextRatingA(spec.gates ?? "bolt", atLeastA) ?? nextRatingA("bolt", atLeastA);
  const change = ratingA === null ? undefined : part.kind.rerate?.(part.settings, spec.terminal, ratingA);
  return change ? { op: "set-props", id: part.part.id, change } : null;
}

export function deviceAt(draft: Draft, at: string): NetElement<Protection> | undefined {
  const [id, terminal] = splitAddress(at);
  return draft.devices.find(({ part, spec }) => part.part.id === id && spec.terminal === terminal);
}
