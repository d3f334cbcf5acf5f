/** Least and median of some times, in the unit given. The least says what the work costs, the median what the machine was doing meanwhile. */
export function spread(times: readonly number[]): { readonly least: number; readonly median: number } {
  const sorted = [...times].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  const median = sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
  return { least: sorted[0]!, median };
}

/**
 * Microseconds of each task, run turn and turn about so that all meet the same machine, for about `budgetMs` and at least `atLeast`
 * rounds after one to warm up.
 */
export function timed<Name extends string>(
  tasks: Readonly<Record<Name, () => void>>,
  budgetMs: number,
  atLeast = 3,
): Readonly<Record<Name, ReturnType<typeof spread>>> {
  const names = Object.keys(tasks) as Name[];
  const times = new Map(names.map((name) => [name, [] as number[]]));
  const end = performance.now() + budgetMs;
  for (let round = 0; round <= atLeast || performance.now() < end; round++) {
    for (const name of names) {
      const start = performance.now();
      tasks[name]();
      if (round > 0) times.get(name)!.push(1000 * (performance.now() - start));
    }
  }
  return Object.fromEntries(names.map((name) => [name, spread(times.get(name)!)])) as Record<
    Name,
    ReturnType<typeof spread>
  >;
}
