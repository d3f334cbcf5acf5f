import { CHASSIS, type Contact, type Converter, type Diode, type Element, type Load } from "./element.ts";
import { groups, isOn, type Drawing, type Setting } from "./drawing.ts";
import { solveBranches, solveLinear, type Branch } from "./linear.ts";

/** What the contract says of one combination. */
export interface Point {
  readonly settled: boolean;
  /** By terminal; `null`: on no network. */
  readonly volts: ReadonlyMap<string, number | null>;
  /** By wire id. */
  readonly wireA: ReadonlyMap<string, number>;
  /** By element number. */
  readonly amps: readonly number[];
  readonly pulledIn: ReadonlyMap<string, boolean>;
  /** Loads, diodes and converters that draw or conduct, by element number. */
  readonly active: ReadonlySet<number>;
  /** The order in which things drop out would change the answer, or this plain method gives up: compare nothing. */
  readonly unsure: boolean;
}

const UNSURE: Point = {
  settled: true,
  volts: new Map(),
  wireA: new Map(),
  amps: [],
  pulledIn: new Map(),
  active: new Set(),
  unsure: true,
};

/** Readings 3 to 8: relays from all released, everything moving at once, until a state repeats. */
export function operatingPoint(drawing: Drawing, setting: Setting): Point {
  const coils = drawing.elements.flatMap((element, at) => (element.type === "load" && element.isCoil ? [at] : []));
  const limits = new Map(
    drawing.document.parts.map(({ id, props }) => [
      id,
      { pullInV: Number(props?.["pullInV"] ?? 7.5), dropOutV: Number(props?.["dropOutV"] ?? 1.5) },
    ]),
  );
  const relays = new Map(coils.map((at) => [drawing.elements[at]!.of, false]));
  const seen = new Set<string>();
  for (;;) {
    const point = pointWith(drawing, setting, relays);
    if (point.unsure) return point;
    const before = [...relays.values()].join(",");
    if (seen.has(before)) return { ...point, settled: false };
    seen.add(before);
    for (const at of coils) {
      const { a, b, of } = drawing.elements[at]!;
      const [va, vb] = [point.volts.get(a), point.volts.get(b)];
      const coilV = va == null || vb == null ? 0 : Math.abs(va - vb);
      const { pullInV, dropOutV } = limits.get(of)!;
      if (Math.abs(coilV - pullInV) < 1e-7 || Math.abs(coilV - dropOutV) < 1e-7) return UNSURE;
      relays.set(of, relays.get(of)! ? coilV >= dropOutV : coilV >= pullInV);
    }
    if ([...relays.values()].join(",") === before) return { ...point, pulledIn: new Map(relays) };
  }
}

export function isClosed({ of, closedIn }: Contact, setting: Setting, relays: ReadonlyMap<string, boolean>): boolean {
  const pulledIn = relays.get(of);
  if (pulledIn !== undefined) return closedIn.includes(pulledIn ? "pulled-in" : "released");
  return closedIn.includes(setting[of] ?? "off");
}

/** Both orders of dropping out must agree, else nothing is said. */
function pointWith(drawing: Drawing, setting: Setting, relays: ReadonlyMap<string, boolean>): Point {
  const worst = dropOut(drawing, setting, relays, true);
  if (worst === null) return UNSURE;
  if (worst.dropped > 1) {
    const least = dropOut(drawing, setting, relays, false);
    if (least === null || [...least.point.active].join() !== [...worst.point.active].join()) return UNSURE;
  }
  return worst.point;
}

function dropOut(
  drawing: Drawing,
  setting: Setting,
  relays: ReadonlyMap<string, boolean>,
  worstFirst: boolean,
): { point: Point; dropped: number } | null {
  const on = new Set(
    drawing.elements.flatMap((element, at) =>
      (element.type === "load" && element.law !== "idle") || element.type === "converter" ? [at] : [],
    ),
  );
  let dropped = 0;
  for (;;) {
    const round = new Round(drawing, setting, relays, on);
    const wrong = round.solve();
    if (wrong === null || round.hasWeakConverter()) return null;
    // What a converter makes of the volts while others drop out is beyond this plain method.
    if (wrong.length === 0) return dropped > 0 && round.hasConverter() ? null : { point: round.point(), dropped };
    dropped += wrong.length;
    wrong.sort((one, other) => (worstFirst ? other.by - one.by : one.by - other.by));
    on.delete(wrong[0]!.at);
  }
}

interface Wrong {
  readonly at: number;
  /** How far out, larger is worse. */
  readonly by: number;
}

/** One solve with a given set of loads on: diodes by trial, laws by repeated stand-ins. */
class Round {
  private readonly present: readonly { element: Element; at: number }[];
  private readonly nodes: readonly string[];
  private readonly merged: (node: string) => string;
  private readonly conducting = new Set<number>();
  /** Stand-in of each load that is on. */
  private readonly standIn = new Map<number, { siemens: number; amps: number }>();
  private readonly watts = new Map<number, number>();
  private volts: ReadonlyMap<string, number> = new Map();
  private amps = new Map<number, number>();
  private wireAmps = new Map<string, number>();

  private readonly drawing: Drawing;
  private readonly setting: Setting;
  private readonly on: ReadonlySet<number>;

  constructor(drawing: Drawing, setting: Setting, relays: ReadonlyMap<string, boolean>, on: ReadonlySet<number>) {
    this.drawing = drawing;
    this.setting = setting;
    this.on = on;
    this.present = drawing.elements
      .map((element, at) => ({ element, at }))
      .filter(({ element }) => {
        if (element.type === "contact") return isClosed(element, setting, relays);
        if (element.type === "source") return isOn(element, setting);
        return element.type !== "fuse" || element.closed;
      });
    const zeroOhm = [...drawing.wires, ...this.present.map(({ element }) => element)].filter(
      (element) =>
        (element.type === "conductor" || element.type === "contact" || element.type === "fuse") && element.ohm === 0,
    );
    this.merged = groups(zeroOhm.map(({ a, b }): [string, string] => [a, b]));
    const all = [
      CHASSIS,
      ...drawing.terminals,
      ...drawing.elements.flatMap((element) => [
        element.a,
        element.b,
        ...(element.type === "converter" ? [element.outA, element.outB] : []),
      ]),
    ];
    this.nodes = [...new Set(all.map(this.merged))];
    for (const { element, at } of this.present) {
      if (element.type === "load" && on.has(at)) this.standIn.set(at, firstStandIn(element));
      if (element.type === "converter" && on.has(at)) this.watts.set(at, 0);
    }
  }

  /** What must drop out, nothing when all laws hold; `null` when this method gives up. */
  solve(): Wrong[] | null {
    let last = Infinity;
    for (let round = 0; round < 400; round++) {
      if (!this.settleDiodes()) return null;
      const wrong = this.wrongOnes(false);
      // Several constant powers may still have a solution this plain iteration can't reach.
      if (wrong.some(({ by }) => by === Infinity)) return round === 0 || this.powers().length < 2 ? wrong : null;
      const change = this.updateStandIns(round > 60);
      if (change < 1e-13 && last < 1e-13) return this.wrongOnes(true);
      last = change;
    }
    return null;
  }

  private powers(): number[] {
    const loads = [...this.standIn.keys()].filter((at) => (this.drawing.elements[at] as Load).law === "power");
    return [...loads, ...this.watts.keys()];
  }

  /** From how many volts a converter with nothing to supply runs is not said; the program says 1 V. */
  hasWeakConverter(): boolean {
    return [...this.watts.keys()].some((at) => {
      const volts = this.across(this.drawing.elements[at]!);
      return volts > 1e-6 && volts < 1.01;
    });
  }

  hasConverter(): boolean {
    return this.watts.size > 0;
  }

  point(): Point {
    const network = groups([
      ...this.drawing.wires.map(({ a, b }): [string, string] => [a, b]),
      ...this.present.map(({ element: { a, b } }): [string, string] => [a, b]),
      // Whether the output of a converter that is off joins its two sides is not said; here it does not.
      ...this.present.flatMap(({ element, at }): [string, string][] =>
        element.type === "converter" && this.on.has(at) ? [[element.outA, element.outB]] : [],
      ),
    ]);
    const zero = new Map<string, string>();
    for (const node of this.drawing.zeros) if (!zero.has(network(node))) zero.set(network(node), node);
    return {
      settled: true,
      volts: new Map(
        this.drawing.terminals.map((terminal) => {
          const reference = zero.get(network(terminal));
          return [terminal, reference === undefined ? null : this.at(terminal) - this.at(reference)];
        }),
      ),
      wireA: this.wireAmps,
      amps: this.drawing.elements.map((_, at) => this.amps.get(at) ?? 0),
      pulledIn: new Map(),
      active: new Set([...this.on, ...this.conducting]),
      unsure: false,
    };
  }

  private at(node: string): number {
    return this.volts.get(this.merged(node)) ?? 0;
  }

  private across({ a, b }: Element): number {
    return this.at(a) - this.at(b);
  }

  /** Flips the diode that is most wrong until none is. */
  private settleDiodes(): boolean {
    const diodes = this.present.filter(({ element }) => element.type === "diode");
    for (let trial = 0; trial < 50; trial++) {
      if (!this.solveOnce()) return false;
      const wrong = diodes
        .map(({ element, at }) => ({
          at,
          by: this.conducting.has(at) ? -this.amps.get(at)! : this.across(element) - (element as Diode).volts,
        }))
        .filter(({ by }) => by > 1e-9)
        .sort((one, other) => other.by - one.by);
      if (wrong.length === 0) return true;
      const { at } = wrong[0]!;
      if (!this.conducting.delete(at)) this.conducting.add(at);
    }
    return false;
  }

  private solveOnce(): boolean {
    const { branches, of } = this.branches();
    const piece = groups(branches.map(({ a, b }): [string, string] => [a, b]));
    const ofPiece = (node: string) => piece(node);
    const solution = solveBranches(this.nodes, branches, ofPiece);
    if (!solution) return false;
    const volts = this.withOffsets(solution.volts, ofPiece);
    if (!volts) return false;
    this.volts = volts;
    of.forEach((key, at) => {
      const amps = solution.amps[at]!;
      if (typeof key === "string") this.wireAmps.set(key, amps);
      else this.amps.set(key, amps);
    });
    for (const [at] of this.watts) {
      const output = of.indexOf(-1 - at);
      const { volts: outV, efficiency } = this.drawing.elements[at] as Converter;
      const outA = -(output < 0 ? 0 : solution.amps[output]!);
      this.watts.set(at, Math.max(0, (outV * outA) / efficiency));
    }
    return true;
  }

  /** Key: wire id, element number, or -1 - element number for a converter's output. */
  private branches(): { branches: Branch[]; of: (string | number)[] } {
    const branches: Branch[] = [];
    const of: (string | number)[] = [];
    const add = (key: string | number, a: string, b: string, more: Record<string, number>) => {
      branches.push({ a: this.merged(a), b: this.merged(b), ...more } as unknown as Branch);
      of.push(key);
    };
    for (const { a, b, ohm, of: id } of this.drawing.wires) if (ohm > 0) add(id, a, b, { siemens: 1 / ohm, amps: 0 });
    const emf = this.setting["engine"] === "running" ? "runningV" : "restV";
    for (const { element, at } of this.present) {
      const { a, b } = element;
      if (element.type === "source") add(at, a, b, { volts: element[emf], ohm: element.ohm });
      if (element.type === "diode" && this.conducting.has(at))
        add(at, a, b, { volts: element.volts, ohm: element.ohm });
      if ("ohm" in element && element.ohm > 0 && !("volts" in element) && element.type !== "source")
        add(at, a, b, { siemens: 1 / element.ohm, amps: 0 });
      const standIn = this.standIn.get(at);
      if (standIn) add(at, a, b, { ...standIn });
      if (element.type === "converter" && this.on.has(at)) {
        add(-1 - at, element.outA, element.outB, { volts: element.volts, ohm: 0 });
        const volts = this.at(a) - this.at(b);
        const watts = this.watts.get(at)!;
        if (volts > 0 && watts > 1e-9) add(at, a, b, { siemens: watts / volts ** 2, amps: 0 });
      }
    }
    return { branches, of };
  }

  /** Pieces that only idle loads and blocking diodes tie together stand where equal tiny leaks would put them. */
  private withOffsets(
    volts: ReadonlyMap<string, number>,
    piece: (node: string) => string,
  ): ReadonlyMap<string, number> | null {
    const ties = this.present.filter(
      ({ element, at }) =>
        (element.type === "load" && !this.standIn.has(at)) ||
        (element.type === "diode" && !this.conducting.has(at)) ||
        element.type === "converter",
    );
    const pairs = ties
      .map(({ element }): [string, string] => [this.merged(element.a), this.merged(element.b)])
      .filter(([a, b]) => piece(a) !== piece(b));
    const network = groups(pairs.map(([a, b]): [string, string] => [piece(a), piece(b)]));
    const pieces = [...new Set(this.nodes.map(piece))];
    const free = new Map(pieces.filter((one) => network(one) !== one).map((one, at) => [one, at]));
    const a = Array.from({ length: free.size }, () => Array.from({ length: free.size }, () => 0));
    const b = Array.from({ length: free.size }, () => 0);
    for (const [from, to] of pairs) {
      const difference = volts.get(from)! - volts.get(to)!;
      const [one, other] = [free.get(piece(from)), free.get(piece(to))];
      if (one !== undefined) {
        a[one]![one]! += 1;
        if (other !== undefined) a[one]![other]! -= 1;
        b[one]! -= difference;
      }
      if (other !== undefined) {
        a[other]![other]! += 1;
        if (one !== undefined) a[other]![one]! -= 1;
        b[other]! += difference;
      }
    }
    const offsets = solveLinear(a, b);
    if (!offsets) return null;
    return new Map([...volts].map(([node, value]) => [node, value + (offsets[free.get(piece(node)) ?? -1] ?? 0)]));
  }

  private wrongOnes(isLast: boolean): Wrong[] {
    const wrong: Wrong[] = [];
    for (const at of this.standIn.keys()) {
      const load = this.drawing.elements[at] as Load;
      const volts = this.across(load);
      if (load.law === "power" && (load.eitherWay ? Math.abs(volts) : volts) < 1e-6) wrong.push({ at, by: Infinity });
      else if (isLast && load.law === "power") {
        const by = Math.max(load.minV - volts, volts - load.maxV) / load.ratedV;
        if (by > 0) wrong.push({ at, by });
      }
      if (isLast && load.law === "current") {
        const felt = load.eitherWay ? Math.abs(volts) : volts;
        if (felt < 1) wrong.push({ at, by: 1 - felt });
      }
    }
    for (const at of this.watts.keys()) {
      if (this.across(this.drawing.elements[at]!) < 1e-6) wrong.push({ at, by: Infinity });
    }
    return wrong;
  }

  /** Moves every stand-in to its law at the volts just found; the largest relative change. */
  private updateStandIns(isFine: boolean): number {
    let change = 0;
    for (const [at, before] of this.standIn) {
      const load = this.drawing.elements[at] as Load;
      const after = standInAt(load, this.across(load), isFine);
      const current = ({ siemens, amps }: typeof before) => siemens * this.across(load) + amps;
      const scale = Math.max(Math.abs(current(after)), 1e-12);
      change = Math.max(change, Math.abs(current(after) - current(before)) / scale);
      this.standIn.set(at, after);
    }
    return change;
  }
}

function firstStandIn({ law, amount, ratedV }: Load): { siemens: number; amps: number } {
  if (law === "resistor") return { siemens: 1 / amount, amps: 0 };
  if (law === "current") return { siemens: amount / ratedV, amps: 0 };
  return { siemens: amount / ratedV ** 2, amps: 0 };
}

/** The law as a conductance through the origin, or (`isFine`) as its tangent. */
function standInAt(load: Load, volts: number, isFine: boolean): { siemens: number; amps: number } {
  const { law, amount, ratedV } = load;
  const size = Math.max(Math.abs(volts), 1e-9);
  switch (law) {
    case "resistor":
    case "idle":
      return firstStandIn(load);
    case "filament":
      return { siemens: (amount / ratedV ** 2) * (size / ratedV) ** -0.45, amps: 0 };
    case "power":
      return isFine
        ? { siemens: -amount / size ** 2, amps: (2 * amount) / volts }
        : { siemens: amount / size ** 2, amps: 0 };
    case "current":
      return isFine && size >= 1
        ? { siemens: 0, amps: Math.sign(volts) * amount }
        : { siemens: amount / Math.max(size, 1e-3), amps: 0 };
  }
}
