import { splitAddress, type Document } from "../document/index.ts";
import { CHASSIS } from "../parts/index.ts";
import { Joined } from "./joined.ts";
import type { StandingPart } from "./standing-part.ts";

/** One wire between two parts, by their indexes and the indexes of their terminals. */
export interface Run {
  readonly from: number;
  readonly to: number;
  readonly fromTerminal: number;
  readonly toTerminal: number;
  /** On the negative side: joined to a source's negative or the chassis by metal alone. */
  readonly isReturn: boolean;
}

/** A wire from one part's side: its own terminal, the part at the other end, and the terminal there. */
export interface RunSeen {
  readonly mine: number;
  readonly other: number;
  readonly theirs: number;
  readonly isReturn: boolean;
}

export interface Flow {
  readonly runs: readonly Run[];
  /** The wires on each part, seen from that part. */
  readonly runsOf: readonly (readonly RunSeen[])[];
  /** By part: everything wired to it is on the negative side, and it is no source itself. */
  readonly isReturn: readonly boolean[];
  /** By part: it has an EMF of its own. */
  readonly isSource: readonly boolean[];
}

/** Which wires bring current out and which bring it back. Wires whose ends are not there are left out. */
export function flowOf(document: Document, standing: readonly StandingPart[]): Flow {
  const addresses = new Addresses(standing);
  const ends = document.wires.flatMap(({ from, to }) => {
    const [a, b] = [addresses.find(from), addresses.find(to)];
    return a && b ? [[a, b] as const] : [];
  });
  const returns = returnTerminals(standing, addresses, ends);
  const runs: Run[] = ends.flatMap(([a, b]) =>
    a.part === b.part
      ? []
      : [{ from: a.part, to: b.part, fromTerminal: a.terminal, toTerminal: b.terminal, isReturn: returns(a.number) }],
  );
  const runsOf: RunSeen[][] = standing.map(() => []);
  for (const { from, to, fromTerminal, toTerminal, isReturn } of runs) {
    runsOf[from]!.push({ mine: fromTerminal, other: to, theirs: toTerminal, isReturn });
    runsOf[to]!.push({ mine: toTerminal, other: from, theirs: fromTerminal, isReturn });
  }
  const isSource = standing.map(({ elements }) => elements.some(({ type }) => type === "source"));
  const isReturn = runsOf.map((own, part) => !isSource[part] && own.length > 0 && own.every((run) => run.isReturn));
  return { runs, runsOf, isReturn, isSource };
}

interface End {
  readonly part: number;
  readonly terminal: number;
  /** Over all terminals of the drawing. */
  readonly number: number;
}

class Addresses {
  readonly count: number;
  private readonly first: readonly number[];
  private readonly partAt: ReadonlyMap<string, StandingPart>;

  constructor(standing: readonly StandingPart[]) {
    let count = 0;
    this.first = standing.map(({ terminals }) => (count += terminals.length) - terminals.length);
    this.count = count;
    this.partAt = new Map(standing.map((one) => [one.part.id, one]));
  }

  find(address: string): End | null {
    const [id, name] = splitAddress(address);
    const one = this.partAt.get(id);
    return one ? this.inside(one, name) : null;
  }

  inside(one: StandingPart, name: string): End | null {
    const terminal = one.terminals.findIndex((each) => each.name === name);
    return terminal < 0 ? null : { part: one.index, terminal, number: this.first[one.index]! + terminal };
  }
}

/** Tells of a terminal's number whether metal alone joins it to a negative, and to no positive. */
function returnTerminals(
  standing: readonly StandingPart[],
  addresses: Addresses,
  ends: readonly (readonly [End, End])[],
): (terminal: number) => boolean {
  const chassis = addresses.count;
  const joined = new Joined(chassis + 1);
  for (const [a, b] of ends) joined.join(a.number, b.number);
  const positives: number[] = [];
  const negatives: number[] = [chassis];
  for (const one of standing) {
    const numberOf = (name: string) => (name === CHASSIS ? chassis : addresses.inside(one, name)?.number);
    const collect = (into: number[], name: string) => {
      const number = numberOf(name);
      if (number !== undefined) into.push(number);
    };
    for (const element of one.elements) {
      if (element.type === "bar") joinAll(joined, element.terminals.map(numberOf));
      // A battery's own strap is left out: that of the upper of two in series is no strap at all.
      if (element.type === "link" && !element.bond) joinAll(joined, [numberOf(element.a), numberOf(element.b)]);
      if (element.type === "source") {
        collect(positives, element.plus);
        collect(negatives, element.minus);
      }
      if (element.type === "converter") {
        collect(positives, element.outPlus);
        collect(negatives, element.outMinus);
      }
    }
  }
  const positive = new Set(positives.map((number) => joined.groupOf(number)));
  const negative = new Set(negatives.map((number) => joined.groupOf(number)));
  return (terminal) => {
    const group = joined.groupOf(terminal);
    return negative.has(group) && !positive.has(group);
  };
}

function joinAll(joined: Joined, numbers: readonly (number | undefined)[]): void {
  const there = numbers.filter((number) => number !== undefined);
  for (const number of there) joined.join(number, there[0]!);
}
