/** Something of a length that would like to begin at a place. */
interface Wish {
  readonly at: number;
  readonly length: number;
}

/**
 * Whole-number beginnings for things in this order so that none overlaps the next and the sum of squared distances from their
 * wishes is least (before rounding). Same order out as in.
 * Source: pool adjacent violators, isotonic regression (Barlow and others, 1972).
 */
export function spread(wishes: readonly Wish[]): number[] {
  const pools: { sum: number; count: number }[] = [];
  let offset = 0;
  const offsets = wishes.map(({ at, length }) => {
    const own = offset;
    offset += length;
    let pool = { sum: at - own, count: 1 };
    for (let last = pools.at(-1); last && last.sum / last.count > pool.sum / pool.count; last = pools.at(-1)) {
      pools.pop();
      pool = { sum: last.sum + pool.sum, count: last.count + pool.count };
    }
    pools.push(pool);
    return own;
  });
  const bases = pools.flatMap(({ sum, count }) => Array.from({ length: count }, () => Math.round(sum / count)));
  return offsets.map((own, at) => own + bases[at]!);
}
