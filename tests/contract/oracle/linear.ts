/** Solves A x = b in place by elimination with row exchange; `null` when A is singular. */
export function solveLinear(a: number[][], b: number[]): number[] | null {
  const n = b.length;
  for (let k = 0; k < n; k++) {
    let best = k;
    for (let row = k + 1; row < n; row++) if (Math.abs(a[row]![k]!) > Math.abs(a[best]![k]!)) best = row;
    if (Math.abs(a[best]![k]!) < 1e-18) return null;
    [a[k], a[best]] = [a[best]!, a[k]!];
    [b[k], b[best]] = [b[best]!, b[k]!];
    for (let row = k + 1; row < n; row++) {
      const factor = a[row]![k]! / a[k]![k]!;
      if (factor === 0) continue;
      for (let column = k; column < n; column++) a[row]![column]! -= factor * a[k]![column]!;
      b[row]! -= factor * b[k]!;
    }
  }
  for (let k = n - 1; k >= 0; k--) {
    for (let column = k + 1; column < n; column++) b[k]! -= a[k]![column]! * b[column]!;
    b[k]! /= a[k]![k]!;
  }
  return b;
}

/** A linear branch: `volts` (at `a` over `b`) behind `ohm`, or a plain conductance with a current of its own. */
export type Branch =
  | { readonly a: string; readonly b: string; readonly volts: number; readonly ohm: number }
  | { readonly a: string; readonly b: string; readonly siemens: number; readonly amps: number };

/** Node volts against any one node of each joined piece, and the current of each branch from `a` to `b`. */
export interface LinearSolution {
  readonly volts: ReadonlyMap<string, number>;
  readonly amps: readonly number[];
  /** Node to the piece it belongs to: what conducting branches join. */
  readonly pieceOf: (node: string) => string;
}

/**
 * A network of linear branches by modified nodal analysis, dense. `piece` names what a node's conducting branches join it to; each
 * piece is solved against a node of its own. Branches of no ohms must have been drawn together before. `null`: no solution.
 */
export function solveBranches(
  nodes: readonly string[],
  branches: readonly Branch[],
  pieceOf: (node: string) => string,
): LinearSolution | null {
  const index = new Map<string, number>();
  for (const node of nodes) if (pieceOf(node) !== node) index.set(node, index.size);
  const sources = branches.filter((branch) => "volts" in branch);
  const size = index.size + sources.length;
  const a = Array.from({ length: size }, () => Array.from({ length: size }, () => 0));
  const b = Array.from({ length: size }, () => 0);
  const add = (row: number | undefined, column: number | undefined, value: number) => {
    if (row !== undefined && column !== undefined) a[row]![column]! += value;
  };
  let extra = index.size;
  const extraOf: number[] = [];
  for (const branch of branches) {
    const from = index.get(branch.a);
    const to = index.get(branch.b);
    extraOf.push("volts" in branch ? extra : -1);
    if ("volts" in branch) {
      add(from, extra, 1);
      add(to, extra, -1);
      add(extra, from, 1);
      add(extra, to, -1);
      add(extra, extra, -branch.ohm);
      b[extra] = branch.volts;
      extra++;
    } else {
      add(from, from, branch.siemens);
      add(to, to, branch.siemens);
      add(from, to, -branch.siemens);
      add(to, from, -branch.siemens);
      if (from !== undefined) b[from]! -= branch.amps;
      if (to !== undefined) b[to]! += branch.amps;
    }
  }
  const x = solveLinear(a, b);
  if (!x) return null;
  const volts = new Map(nodes.map((node) => [node, index.has(node) ? x[index.get(node)!]! : 0]));
  const amps = branches.map((branch, at) =>
    "volts" in branch ? x[extraOf[at]!]! : branch.siemens * (volts.get(branch.a)! - volts.get(branch.b)!) + branch.amps,
  );
  return { volts, amps, pieceOf };
}
