/** Random circuits for the solver's laws: a vehicle-like frame with anything the solver knows strung onto it. */
import fc from "fast-check";
import type { Branch, Circuit, Relay, State } from "../../core/circuit/index.ts";

export interface LawCase {
  readonly circuit: Circuit;
  readonly state: State;
  /** Contacts and sources, to flick. */
  readonly flickable: readonly number[];
}

const ohm = fc.oneof(
  { weight: 8, arbitrary: fc.double({ min: 1e-3, max: 1, noNaN: true }) },
  { weight: 2, arbitrary: fc.double({ min: 1, max: 200, noNaN: true }) },
  { weight: 1, arbitrary: fc.constant(0) },
);
const someOhm = fc.double({ min: 2e-3, max: 0.5, noNaN: true });
const volts = fc.constantFrom(12, 12.6, 13.8, 24, 25.2);

type Ends = { readonly a: number; readonly b: number };
type Shape = (ends: Ends, nodeCount: number) => fc.Arbitrary<Branch>;

const linear: readonly Shape[] = [
  (ends) => ohm.map((r) => ({ type: "resistor", ...ends, ohm: r })),
  (ends) => ohm.map((r) => ({ type: "contact", ...ends, ohm: r })),
  (ends) => fc.tuple(volts, someOhm).map(([v, r]) => ({ type: "source", ...ends, volts: v, ohm: r })),
];

const others: readonly Shape[] = [
  (ends) => someOhm.map((r) => ({ type: "diode", ...ends, forwardV: 0.7, ohm: r })),
  (ends) => fc.constantFrom(5, 21, 55).map((watts) => ({ type: "filament", ...ends, watts, ratedV: 12.8 })),
  (ends) =>
    fc
      .tuple(fc.double({ min: 1, max: 60, noNaN: true }), fc.constantFrom(null, 6, 9), fc.boolean())
      .map(([watts, minV, eitherWay]) => {
        return { type: "power", ...ends, watts, minV, maxV: minV === null ? null : 32, eitherWay };
      }),
  (ends) =>
    fc
      .tuple(fc.double({ min: 0.1, max: 5, noNaN: true }), fc.boolean())
      .map(([amps, eitherWay]) => ({ type: "current", ...ends, amps, eitherWay })),
  ({ a, b }, nodeCount) =>
    fc
      .tuple(fc.nat(nodeCount - 1), fc.nat(nodeCount - 1), fc.constantFrom(5, 12, 24))
      .map(([outA, outB, out]) => ({ type: "converter", a, b, outA, outB, volts: out, efficiency: 0.85 })),
];

/** `nonlinear` false: resistors, contacts and sources alone. */
export function lawCases(nonlinear: boolean): fc.Arbitrary<LawCase> {
  return fc.integer({ min: 3, max: 24 }).chain((nodeCount) => {
    const node = fc.nat(nodeCount - 1);
    const ends = fc.tuple(node, node).map(([a, b]) => ({ a, b }));
    const frame = fc
      .tuple(...Array.from({ length: nodeCount - 1 }, (_, i) => fc.tuple(fc.nat(i), ohm)))
      .map((parents) => parents.map(([parent, r], i): Branch => ({ type: "resistor", a: i + 1, b: parent, ohm: r })));
    const kinds = nonlinear ? [...linear, ...linear, ...others] : linear;
    const strung = fc.array(
      fc.tuple(ends, fc.nat(kinds.length - 1)).chain(([at, kind]) => kinds[kind]!(at, nodeCount)),
      { maxLength: 2 * nodeCount },
    );
    return fc
      .record({
        frame,
        strung,
        cut: fc.array(fc.nat(nodeCount - 2), { maxLength: 4 }),
        zeros: fc.uniqueArray(node, { minLength: 1, maxLength: 3 }),
        seed: fc.nat(),
        relays: fc.nat(2),
      })
      .map(({ frame: tree, strung: more, cut, zeros, seed, relays }) =>
        assemble(nodeCount, tree, more, cut, zeros, seed, nonlinear ? relays : 0),
      );
  });
}

function assemble(
  nodeCount: number,
  tree: Branch[],
  more: Branch[],
  cut: number[],
  references: number[],
  seed: number,
  relayCount: number,
): LawCase {
  const branches = [...tree.filter((_, i) => !cut.includes(i)), ...more];
  const indices = (type: Branch["type"]): number[] =>
    branches.flatMap((branch, i) => (branch.type === type ? [i] : []));
  const contacts = indices("contact");
  const coils = indices("resistor").filter((i) => "ohm" in branches[i]! && branches[i].ohm > 1);
  const relays: Relay[] = coils.slice(0, relayCount).flatMap((coil, i) => {
    const moved = contacts.filter((_, c) => c % 4 === i);
    return moved.length === 0
      ? []
      : [{ coil, pullInV: 7.5, dropOutV: 1.5, makes: moved.slice(1), breaks: moved.slice(0, 1) }];
  });
  const closed = Uint8Array.from(branches, (_, i) => (((seed >> (i % 24)) + i) % 3 === 0 ? 0 : 1));
  return {
    circuit: { nodeCount, branches, relays, references },
    state: { closed, sourceV: null },
    flickable: [...contacts, ...indices("source")],
  };
}
