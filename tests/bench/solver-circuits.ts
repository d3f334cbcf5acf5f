/**
 * Seeded test circuits that look like a vehicle: a battery, a feed bus, runs of wire segments with a fuse and a contact in each,
 * loads, returns to one ground strip, one lead from strip to battery, and a tenth of the nodes tied to another one of their side as well.
 * Node numbers are shuffled, so nothing is gained from the order they were made in.
 */
import type { Branch, Circuit, State } from "../../core/circuit/index.ts";

/** A small generator of repeatable numbers in 0..1 (mulberry32). */
function seeded(seed: number): () => number {
  let a = seed >>> 0;
  return () => {
    a = (a + 0x6d2b79f5) >>> 0;
    let t = a;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

export interface BenchCircuit {
  readonly circuit: Circuit;
  readonly state: State;
  /** Contact branches, to flick. */
  readonly contacts: readonly number[];
}

/** What all loads together are made for, so that a large circuit is as loaded as a small one. */
const TOTAL_W = 600;

/** `loads`: plain resistances (comparable with a linear solver), or constant powers that open outside their range. */
export function benchCircuit(nodeTarget: number, seed: number, loads: "resistor" | "power"): BenchCircuit {
  const random = seeded(seed);
  const branches: Branch[] = [];
  const contacts: number[] = [];
  let nodeCount = 0;
  const node = (): number => nodeCount++;
  const wire = (a: number, b: number, ohm: number): void => void branches.push({ type: "resistor", a, b, ohm });
  const milliohm = (from: number, to: number): number => (from + (to - from) * random()) / 1000;
  const [minus, plus, bus, strip] = [node(), node(), node(), node()] as const;
  branches.push({ type: "source", a: plus, b: minus, volts: 12.6, ohm: 0.006 });
  wire(plus, bus, milliohm(0.5, 2));
  wire(strip, minus, milliohm(0.5, 2));
  const run = (from: number, pieces: number, side: number[]): number => {
    let at = from;
    for (let i = 0; i < pieces; i++) {
      const next = node();
      wire(at, next, milliohm(2, 20));
      side.push(next);
      at = next;
    }
    return at;
  };
  const feedSide: number[] = [];
  const returnSide: number[] = [];
  while (nodeCount < nodeTarget - 8) {
    const fused = node();
    wire(bus, fused, milliohm(2, 12));
    let at = run(fused, 1 + Math.floor(random() * 4), feedSide);
    const switched = node();
    contacts.push(branches.length);
    branches.push({ type: "contact", a: at, b: switched, ohm: milliohm(5, 10) });
    at = switched;
    const feeds = 1 + Math.floor(random() * 3);
    for (let i = 0; i < feeds && nodeCount < nodeTarget - 4; i++) {
      const positive = run(at, 1 + Math.floor(random() * 4), feedSide);
      const negative = run(strip, 1 + Math.floor(random() * 3), returnSide);
      const watts = ((0.2 + 1.6 * random()) * TOTAL_W * 9) / nodeTarget;
      if (loads === "resistor") wire(positive, negative, 12 ** 2 / watts);
      else branches.push({ type: "power", a: positive, b: negative, watts, minV: 9, maxV: 16, eitherWay: false });
    }
  }
  for (let i = Math.floor(nodeCount / 10); i > 0; i--) {
    const side = random() < 0.6 ? returnSide : feedSide;
    const at = Math.floor(random() * side.length);
    const other = Math.min(side.length - 1, at + 1 + Math.floor(random() * 12));
    if (other !== at) wire(side[at]!, side[other]!, milliohm(20, 200));
  }
  return shuffled({ branches, contacts, nodeCount, minus }, random);
}

interface Made {
  readonly branches: readonly Branch[];
  readonly contacts: readonly number[];
  readonly nodeCount: number;
  readonly minus: number;
}

function shuffled({ branches, contacts, nodeCount, minus }: Made, random: () => number): BenchCircuit {
  const to = Array.from({ length: nodeCount }, (_, i) => i);
  for (let i = nodeCount - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    [to[i], to[j]] = [to[j]!, to[i]!];
  }
  const circuit: Circuit = {
    nodeCount,
    branches: branches.map((branch) => ({ ...branch, a: to[branch.a]!, b: to[branch.b]! })),
    relays: [],
    references: [to[minus]!],
  };
  const state: State = { closed: new Uint8Array(branches.length).fill(1), sourceV: null };
  return { circuit, state, contacts };
}
