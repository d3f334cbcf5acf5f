import fc from "fast-check";
import type { Document, Part, Situation, SystemSettings, Wire } from "../../core/document/index.ts";
import { kindOf, settingsOf } from "../../core/parts/index.ts";
import { ground, ownSymbol, partOf, source, through, use, withCover, type Link } from "./random-parts.ts";

/** Sizes of a random circuit: chains of parts from a source to a ground, and wires between any two terminals. */
export interface Extent {
  readonly chains: { readonly min: number; readonly max: number };
  readonly strays: number;
  /** A size or length may be missing, and lengths may be 0. */
  readonly unknowns: boolean;
  /** Symbols of people's own among the parts. */
  readonly ownSymbols?: boolean;
}

interface Chain {
  readonly from: number;
  readonly links: readonly Link[];
  readonly use: Link;
  readonly to: number;
}

type WireNote = Omit<Wire, "id" | "from" | "to">;

const size = fc.constantFrom(
  "18 AWG",
  "16 AWG",
  "14 AWG",
  "10 AWG",
  "6 AWG",
  "1/0 AWG",
  "0.75 mm2",
  "1.5 mm2",
  "6 mm2",
);
const metres = fc.constantFrom(0.05, 0.15, 0.5, 1, 2, 3.5, 7);

function wireNote(unknowns: boolean): fc.Arbitrary<WireNote> {
  const rest = {
    insulationC: fc.constantFrom(60, 105, 125),
    ambientC: fc.constantFrom(20, 60, 110),
    bundle: fc.constantFrom(1, 3, 5, 12),
    sheathed: fc.boolean(),
    colour: fc.constantFrom("RD", "BK", "RDBU"),
    label: fc.constantFrom("L1", "L2"),
  };
  if (!unknowns) return fc.record({ size, metres, ...rest }, { requiredKeys: ["size", "metres"] });
  return fc.record({ size, metres: fc.oneof(metres, fc.constant(0)), ...rest }, { requiredKeys: [] });
}

/** Terminal addresses of parts, in file order. */
export function addressesOf(parts: readonly Part[]): string[] {
  return parts.flatMap((part) =>
    kindOf(part.kind)!
      .terminals(settingsOf(part))
      .map(({ name }) => `${part.id}.${name}`),
  );
}

/** Builds parts and wires one after another; numbers pick among what is there. */
class Builder {
  readonly parts: Part[] = [];
  readonly ends: [string, string][] = [];

  add(link: Link): { id: string; enters: string; leaves: string } {
    const id = `${link.kind.slice(0, 2)}${this.parts.length + 1}`;
    this.parts.push(partOf(id, link));
    return { id, enters: `${id}.${link.enters}`, leaves: `${id}.${link.leaves}` };
  }

  chain({ from, links, use, to }: Chain, starts: readonly string[], grounds: readonly string[]): void {
    let last = starts[from % starts.length]!;
    for (const link of [...links, use]) {
      const part = this.add(link);
      this.ends.push([last, part.enters]);
      last = part.leaves;
      if (link.kind === "relay" && link !== use) {
        this.ends.push([this.anywhere(from * 7 + to * 3), `${part.id}.86`], [`${part.id}.85`, grounds[0]!]);
      }
    }
    this.ends.push([last, grounds[to % grounds.length]!]);
  }

  /** A terminal that was there before the last part. */
  private anywhere(pick: number): string {
    const addresses = addressesOf(this.parts.slice(0, -1));
    return addresses[pick % addresses.length]!;
  }
}

const system: fc.Arbitrary<SystemSettings> = fc.record(
  {
    nominalV: fc.constantFrom<12 | 24>(12, 12, 12, 24),
    ambientC: fc.constantFrom(20, 45),
    conductorC: fc.constantFrom(20, 60),
    capacityTable: fc.constantFrom<"vehicle" | "insulation">("vehicle", "insulation"),
    alternatorA: fc.constantFrom(60, 120),
    baseLoadA: fc.constantFrom(10, 40),
  },
  { requiredKeys: [] },
);

function situationsOf(parts: readonly Part[], picks: readonly (readonly number[])[]): Situation[] {
  const controls = parts.flatMap((part) => {
    const control = kindOf(part.kind)!.control?.(settingsOf(part));
    return control ? [{ id: part.id, positions: control.positions }] : [];
  });
  const all = [{ id: "engine", positions: ["off", "running"] }, ...controls];
  return picks.map((pick, at) => ({
    id: `s-${at + 1}`,
    set: Object.fromEntries(
      all.map(({ id, positions }, control) => [id, positions[(pick[control % pick.length] ?? 0) % positions.length]!]),
    ),
  }));
}

/** A valid document: most of it chains that could be built, the rest wires anywhere. */
export function randomCircuit({ chains, strays, unknowns, ownSymbols = false }: Extent): fc.Arbitrary<Document> {
  const chain: fc.Arbitrary<Chain> = fc.record({
    from: fc.nat(1000),
    links: fc.array(withCover(ownSymbols ? fc.oneof({ weight: 6, arbitrary: through }, ownSymbol) : through), {
      maxLength: 4,
    }),
    use: withCover(use),
    to: fc.nat(1000),
  });
  return fc
    .record({
      system,
      sources: fc.array(source, { minLength: 1, maxLength: 3 }),
      grounds: fc.array(ground, { minLength: 1, maxLength: 2 }),
      chains: fc.array(chain, { minLength: chains.min, maxLength: chains.max }),
      strays: fc.array(fc.tuple(fc.nat(10_000), fc.nat(10_000)), { maxLength: strays }),
      notes: fc.array(wireNote(unknowns), { minLength: 1, maxLength: 12 }),
      picks: fc.array(fc.array(fc.nat(11), { minLength: 1, maxLength: 9 }), { maxLength: 3 }),
    })
    .map((spec): Document => {
      const builder = new Builder();
      const starts = spec.sources.map((link) => builder.add(link).leaves);
      const grounds = spec.grounds.map((link) => builder.add(link).enters);
      const batteries = builder.parts.filter(({ kind }) => kind === "battery").map(({ id }) => `${id}.-`);
      for (const one of spec.chains) builder.chain(one, starts, [...grounds, ...batteries]);
      const addresses = addressesOf(builder.parts);
      for (const [from, to] of spec.strays) {
        const ends: [string, string] = [addresses[from % addresses.length]!, addresses[to % addresses.length]!];
        if (ends[0] !== ends[1]) builder.ends.push(ends);
      }
      return {
        format: "groundstrap",
        version: 1,
        system: spec.system,
        parts: builder.parts,
        wires: builder.ends.map(([from, to], at) => ({
          id: `w${at + 1}`,
          from,
          to,
          ...spec.notes[at % spec.notes.length],
        })),
        situations: situationsOf(builder.parts, spec.picks),
      };
    });
}
