/** One value seen outside this project beside the one the program gives. */
export interface Check {
  readonly of: string;
  readonly expected: number;
  readonly got: number | null;
  /** When not the quantity's. */
  readonly source?: string;
}

/** A quantity of the program and all outside values it is held to. */
export interface Quantity {
  readonly quantity: string;
  /** Unit of the errors: "%" compares ratios, any other unit differences. */
  readonly unit: string;
  /** Largest error allowed. */
  readonly limit: number;
  /** Why the limit is what it is. */
  readonly because: string;
  readonly source: string;
  readonly checks: readonly Check[];
}

/** How far off a check is, in the unit of its quantity; infinite when the program gave no answer. */
export function errorOf(quantity: Quantity, { expected, got }: Check): number {
  if (got === null || !Number.isFinite(got)) return Number.POSITIVE_INFINITY;
  const difference = Math.abs(got - expected);
  return quantity.unit === "%" ? (100 * difference) / Math.abs(expected) : difference;
}
