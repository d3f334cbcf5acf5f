/**
 * What a solve costs, beside two matrix libraries on the same circuits in the same run: read the ratios, not the times.
 *
 * The libraries only solve one set of linear equations, put together for them beforehand; this solver is given the circuit and
 * does all of its work: clusters, order, elimination, volts, amps, networks, residuals.
 */
import { Matrix, solve as solveDense } from "ml-matrix";
import { all, create } from "mathjs";
import type { Circuit } from "../../core/circuit/index.ts";
import { createSolver } from "../../core/solver/index.ts";
import { planElimination } from "../../core/solver/ordering.ts";
import { benchCircuit } from "./solver-circuits.ts";
import { spread, timed } from "./timing.ts";

const SIZES = [20, 100, 1000, 10_000];
const SEED = 1;
/** Largest sizes that end within a minute. */
const LARGEST_DENSE = 1000;
const LARGEST_OWN_ORDER = 1000;

const math = create(all!);
/** The library's compressed-column matrix, which its type declarations leave out. */
const { SparseMatrix } = math as unknown as { SparseMatrix: new (data: object) => math.Matrix };

interface Equations {
  /** Compressed columns; the matrix is symmetric. */
  readonly values: number[];
  readonly index: number[];
  readonly ptr: number[];
  readonly right: number[];
}

/** Row of every node but the zero: as numbered in the circuit, or in the order this solver eliminates them. */
function rowsOf({ nodeCount, branches, references }: Circuit, order: "numbered" | "eliminated"): ArrayLike<number> {
  const zero = references[0]!;
  if (order === "numbered") return Array.from({ length: nodeCount }, (_, node) => (node < zero ? node : node - 1));
  const ends = Int32Array.from(branches.flatMap(({ a, b }) => (a === b ? [] : [a, b])));
  return planElimination(nodeCount, ends, [zero]).positionOf;
}

/** Nodal equations of a circuit of resistances and sources behind resistances. */
function equationsOf(circuit: Circuit, order: "numbered" | "eliminated"): Equations {
  const { nodeCount, branches, references } = circuit;
  const zero = references[0]!;
  const rowOf = rowsOf(circuit, order);
  const columns = Array.from({ length: nodeCount - 1 }, () => new Map<number, number>());
  const right = Array.from({ length: nodeCount - 1 }, () => 0);
  for (const branch of branches) {
    if (!("ohm" in branch)) continue;
    const g = 1 / branch.ohm;
    for (const [from, to, sign] of [[branch.a, branch.b, 1] as const, [branch.b, branch.a, -1] as const]) {
      if (from === zero) continue;
      const at = rowOf[from]!;
      const column = columns[at]!;
      column.set(at, (column.get(at) ?? 0) + g);
      if (to !== zero) column.set(rowOf[to]!, (column.get(rowOf[to]!) ?? 0) - g);
      if (branch.type === "source") right[at]! += sign * g * branch.volts;
    }
  }
  const sorted = columns.map((column) => [...column].sort(([a], [b]) => a - b));
  const ptr = [0];
  for (const column of sorted) ptr.push(ptr[ptr.length - 1]! + column.length);
  return {
    values: sorted.flatMap((column) => column.map(([, g]) => g)),
    index: sorted.flatMap((column) => column.map(([row]) => row)),
    ptr,
    right,
  };
}

/** Microseconds of one sparse LU with the library's column order `order` (0: as given). */
function sparseUs({ values, index, ptr, right }: Equations, order: 0 | 1 | 2 | 3, budgetMs: number): number {
  const size = right.length;
  const sparse = new SparseMatrix({ values, index, ptr, size: [size, size], datatype: "number" });
  const solve = (): void => void math.lusolve(math.slu(sparse, order, 0.001) as unknown as math.Matrix, right);
  return timed({ solve }, budgetMs, 1).solve.least;
}

function denseUs({ values, index, ptr, right }: Equations, budgetMs: number): number {
  const rows = right.map(() => right.map(() => 0));
  for (let column = 0; column < right.length; column++) {
    for (let p = ptr[column]!; p < ptr[column + 1]!; p++) rows[index[p]!]![column] = values[p]!;
  }
  const matrix = new Matrix(rows);
  const vector = Matrix.columnVector(right);
  const times: number[] = [];
  for (const end = performance.now() + budgetMs; times.length === 0 || performance.now() < end;) {
    const start = performance.now();
    solveDense(matrix, vector);
    times.push(1000 * (performance.now() - start));
  }
  return spread(times).least;
}

function ownUs(
  nodes: number,
  loads: "resistor" | "power",
  budgetMs: number,
): Record<"cold" | "volts" | "flick" | "shorts", number> {
  const { circuit, state, contacts } = benchCircuit(nodes, SEED, loads);
  const steady = { closed: state.closed.slice(), sourceV: null };
  const sourceV = new Float64Array(circuit.branches.length);
  const [forVolts, forFlicks] = [createSolver(circuit), createSolver(circuit)];
  let turn = 0;
  const times = timed(
    {
      cold: () => void createSolver(circuit).solve(steady),
      volts: () => {
        sourceV.fill(12.6 + (turn % 2));
        forVolts.solve({ closed: steady.closed, sourceV });
      },
      flick: () => {
        const contact = contacts[turn++ % contacts.length]!;
        state.closed[contact] = 1 - state.closed[contact]!;
        forFlicks.solve(state);
      },
      shorts: () => void forVolts.shortCurrents(steady),
    },
    budgetMs,
  );
  return { cold: times.cold.least, volts: times.volts.least, flick: times.flick.least, shorts: times.shorts.least };
}

const us = (time: number | null): string => (time === null ? "-" : time.toPrecision(3)).padStart(10);

/** Prints the table; `print` takes lines without their end. */
export function benchSolver(print: (line: string) => void): void {
  print("Solver, least of many runs, microseconds (seeded circuits, seed 1)");
  print(
    "nodes      loads       cold      volts      flick     shorts | mathjs LU  in our order  ml-matrix | cold/flick  mathjs/cold",
  );
  for (const nodes of SIZES) {
    const budgetMs = nodes > 1000 ? 6000 : 2000;
    const { circuit } = benchCircuit(nodes, SEED, "resistor");
    const equations = equationsOf(circuit, "numbered");
    const ordered = sparseUs(equationsOf(circuit, "eliminated"), 0, budgetMs / 2);
    const own =
      nodes > LARGEST_OWN_ORDER
        ? null
        : Math.min(...([1, 2, 3] as const).map((order) => sparseUs(equations, order, budgetMs / 4)));
    const dense = nodes > LARGEST_DENSE ? null : denseUs(equations, budgetMs / 4);
    for (const loads of ["resistor", "power"] as const) {
      const { cold, volts, flick, shorts } = ownUs(nodes, loads, budgetMs);
      const beside =
        loads === "power"
          ? ""
          : `${us(own)} ${us(ordered)}   ${us(dense)} | ${us(cold / flick)} ${us(own === null ? null : own / cold)}`;
      print(
        `${String(nodes).padStart(5)} ${loads.padStart(10)} ${us(cold)} ${us(volts)} ${us(flick)} ${us(shorts)} | ${beside}`,
      );
    }
  }
}
