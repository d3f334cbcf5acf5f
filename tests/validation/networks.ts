import { publishedNetworks } from "./dc-networks.ts";
import type { Quantity } from "./quantity.ts";
import { reading, solveNetlist } from "./solved-netlist.ts";

/** Whole networks worked out in print: bridges, cubes, ladders, several sources, LED circuits. */
export const networkQuantities: readonly Quantity[] = [
  {
    quantity: "volts, amps, watts and ohms of networks",
    unit: "print roundings",
    limit: 1,
    because: "each answer is printed to so many digits, and is to be met within half of the last one",
    source: "textbooks and course pages, beside each network",
    checks: publishedNetworks.flatMap(({ title, netlist, printed, tolerance, source }) => {
      const solved = solveNetlist(netlist);
      return Object.entries(printed).map(([thing, value]) => ({
        of: `${title}: ${thing}`,
        expected: value / tolerance,
        got: reading(solved, thing) / tolerance,
        source,
      }));
    }),
  },
];
