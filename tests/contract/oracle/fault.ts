import { CHASSIS } from "./element.ts";
import { groups, isOn, type Drawing } from "./drawing.ts";
import type { Heat, Stand } from "./hot.ts";
import { solveBranches, type Branch } from "./linear.ts";
import { isClosed } from "./operating-point.ts";

/** By terminal: amps of a dead short to battery negative in the worst combination, one solve per terminal and combination. */
export function faultsOf(
  drawing: Drawing,
  stands: readonly Stand[],
  heat: ReadonlyMap<string, Heat>,
): Map<string, number | null> | null {
  const worst = new Map<string, number | null>(drawing.terminals.map((terminal) => [terminal, null]));
  for (const stand of stands) {
    if (!stand.point.settled) continue;
    for (const terminal of drawing.terminals) {
      if (heat.get(terminal)!.via !== "direct") continue;
      const amps = shortAt(drawing, stand, terminal);
      if (amps === "gave up") return null;
      // Where no source drives anything (a converter's output: converters are off) the program says nothing, not a comforting 0.
      if (amps !== null && amps > 1e-6) worst.set(terminal, Math.max(worst.get(terminal) ?? 0, amps));
    }
  }
  return worst;
}

/** `null`: nothing to short against. */
function shortAt(drawing: Drawing, stand: Stand, terminal: string): number | null | "gave up" {
  const { setting, point } = stand;
  const present = drawing.elements.filter((element) => {
    if (element.type === "contact") return isClosed(element, setting, point.pulledIn);
    if (element.type === "fuse") return element.closed;
    if (element.type === "source") return isOn(element, setting);
    return element.type === "conductor" || (element.type === "diode" && !element.suppresses);
  });
  const joined = groups([...drawing.wires, ...present].map(({ a, b }): [string, string] => [a, b]));
  const zero = drawing.zeros.find((node) => joined(node) === joined(terminal));
  if (zero === undefined) return null;
  const zeroOhm = [...drawing.wires, ...present].filter(
    (element) => element.type !== "source" && element.type !== "diode" && "ohm" in element && element.ohm === 0,
  );
  const merged = groups(zeroOhm.map(({ a, b }): [string, string] => [a, b]));
  if (merged(zero) === merged(terminal)) return null;
  const diodes = present.flatMap((element) => (element.type === "diode" ? [element] : []));
  const conducting = new Set<(typeof diodes)[number]>();
  const nodes = [
    ...new Set(
      [CHASSIS, terminal, zero, ...[...drawing.wires, ...drawing.elements].flatMap(({ a, b }) => [a, b])].map(merged),
    ),
  ];
  for (let trial = 0; trial < 60; trial++) {
    const branches: Branch[] = [...drawing.wires, ...present].flatMap((element): Branch[] => {
      const [a, b] = [merged(element.a), merged(element.b)];
      if (element.type === "source") return [{ a, b, volts: element.restV, ohm: element.ohm }];
      if (element.type === "diode")
        return conducting.has(element)
          ? [{ a, b, volts: element.volts, ohm: element.ohm }]
          : [{ a, b, siemens: 1e-9, amps: 0 }];
      return "ohm" in element && element.ohm > 0 ? [{ a, b, siemens: 1 / element.ohm, amps: 0 }] : [];
    });
    branches.push({ a: merged(terminal), b: merged(zero), volts: 0, ohm: 0 });
    const piece = groups(branches.map(({ a, b }): [string, string] => [a, b]));
    const solution = solveBranches(nodes, branches, piece);
    if (!solution) return "gave up";
    const wrong = diodes.find((diode) => {
      const volts = solution.volts.get(merged(diode.a))! - solution.volts.get(merged(diode.b))!;
      return conducting.has(diode) ? volts < diode.volts - 1e-9 : volts > diode.volts + 1e-9;
    });
    if (!wrong) return Math.abs(solution.amps.at(-1)!);
    if (!conducting.delete(wrong)) conducting.add(wrong);
  }
  return "gave up";
}
