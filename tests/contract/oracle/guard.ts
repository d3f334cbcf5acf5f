import { groups, type Drawing } from "./drawing.ts";
import type { Contact, Fuse } from "./element.ts";

export interface Guard {
  readonly at: string;
  readonly ratingA: number | null;
}

/** What protects one wire: `undefined` when no way reaches it. */
export interface WireGuard {
  readonly guard: Guard | null | undefined;
  readonly unguardedM: number | null;
}

interface Step {
  readonly to: string;
  readonly fuse: Fuse | null;
  readonly contact: Contact | null;
  readonly wire: string | null;
}

interface Walk {
  readonly node: string;
  readonly passed: ReadonlySet<string>;
  /** What each mover may still stand in. */
  readonly stands: ReadonlyMap<string, readonly string[]>;
  readonly guard: Guard | null;
  /** Metres so far; `null` once a length is unknown. */
  readonly metres: number | null;
}

/** Walks every way there is, one at a time, without ever meeting a node twice. `null`: too many ways to walk. */
export function guardsOf(drawing: Drawing, mostSteps = 200_000): Map<string, WireGuard> | null {
  const steps = stepsOf(drawing);
  const ends = endsOf(drawing);
  const lengths = new Map(drawing.document.wires.map(({ id, metres }) => [id, metres ?? null]));
  const found = new Map<string, { guard: Guard | null; metres: number | null }[]>(
    drawing.wires.map(({ of }) => [of, []]),
  );
  let left = mostSteps;
  for (const start of startsOf(drawing)) {
    const open: Walk[] = [
      { node: start.node, passed: new Set([start.node]), stands: new Map(), guard: start.own, metres: 0 },
    ];
    for (let walk = open.pop(); walk; walk = open.pop()) {
      if (left-- < 0) return null;
      for (const step of steps.get(walk.node) ?? []) {
        const length = step.wire === null ? 0 : lengths.get(step.wire)!;
        const metres = walk.metres === null || length === null ? null : walk.metres + length;
        if (step.wire !== null && !ends.has(walk.node)) found.get(step.wire)!.push({ guard: walk.guard, metres });
        if (walk.passed.has(step.to) || ends.has(step.to)) continue;
        const stands = afterContact(walk.stands, step.contact);
        if (!stands) continue;
        open.push({
          node: step.to,
          passed: new Set([...walk.passed, step.to]),
          stands,
          guard: step.fuse ? lesser(walk.guard, step.fuse) : walk.guard,
          metres,
        });
      }
    }
  }
  return new Map([...found].map(([wire, ways]) => [wire, worst(ways)]));
}

function worst(ways: readonly { guard: Guard | null; metres: number | null }[]): WireGuard {
  const [first] = ways.toSorted((one, other) => rank(one.guard) - rank(other.guard));
  if (!first) return { guard: undefined, unguardedM: null };
  if (first.guard !== null) return { guard: first.guard, unguardedM: 0 };
  const metres = ways.filter(({ guard }) => guard === null).map((way) => way.metres);
  return { guard: null, unguardedM: metres.includes(null) ? null : Math.min(...metres.map(Number)) };
}

/** No device is the least protection, an unknown one next, then the larger rating. */
function rank(guard: Guard | null): number {
  if (guard === null) return -Infinity;
  return guard.ratingA === null ? -1e9 : -guard.ratingA;
}

function lesser(before: Guard | null, { name, ratingA }: Fuse): Guard {
  const here = { at: name, ratingA };
  if (before === null || before.ratingA === null) return before !== null && ratingA === null ? before : here;
  return ratingA === null || before.ratingA <= ratingA ? before : here;
}

function afterContact(stands: Walk["stands"], contact: Contact | null): Walk["stands"] | null {
  if (!contact) return stands;
  const before = stands.get(contact.of) ?? contact.closedIn;
  const left = before.filter((position) => contact.closedIn.includes(position));
  return left.length === 0 ? null : new Map([...stands, [contact.of, left]]);
}

function startsOf(drawing: Drawing): { node: string; own: Guard | null }[] {
  return drawing.elements.flatMap((element) => {
    if (element.type === "source") return [{ node: element.a, own: element.own ?? null }];
    if (element.type !== "converter") return [];
    return [{ node: element.outA, own: { at: element.of, ratingA: element.maxA } }];
  });
}

function stepsOf(drawing: Drawing): Map<string, Step[]> {
  const steps = new Map<string, Step[]>();
  const add = (from: string, step: Step) => steps.set(from, [...(steps.get(from) ?? []), step]);
  const both = (a: string, b: string, step: Omit<Step, "to">) => {
    add(a, { ...step, to: b });
    add(b, { ...step, to: a });
  };
  const plain = { fuse: null, contact: null, wire: null };
  for (const { a, b, of } of drawing.wires) both(a, b, { ...plain, wire: of });
  for (const element of drawing.elements) {
    const { a, b } = element;
    if (element.type === "conductor") both(a, b, plain);
    if (element.type === "fuse" && element.isWay) both(a, b, { ...plain, fuse: element });
    if (element.type === "contact") both(a, b, { ...plain, contact: element });
    if (element.type === "diode" && !element.suppresses) add(a, { ...plain, to: b });
  }
  return steps;
}

/** Nodes tied to a source's negative without a contact (and that are no source's positive): ways end there. */
function endsOf(drawing: Drawing): Set<string> {
  const fixed = drawing.elements.filter(
    (element) => element.type === "conductor" || (element.type === "fuse" && element.closed),
  );
  const set = groups([...drawing.wires, ...fixed].map(({ a, b }): [string, string] => [a, b]));
  const plus = new Set<string>();
  const minus = new Set<string>();
  for (const element of drawing.elements) {
    if (element.type === "source") {
      plus.add(set(element.a));
      minus.add(set(element.b));
    }
    if (element.type === "converter") {
      plus.add(set(element.outA));
      minus.add(set(element.outB));
    }
  }
  const nodes = [...drawing.wires, ...drawing.elements].flatMap(({ a, b }) => [a, b]);
  return new Set(nodes.filter((node) => minus.has(set(node)) && !plus.has(set(node))));
}
