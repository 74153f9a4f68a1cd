/** One measured number and what it should be. */
export type Measurement = {
  readonly area: string;
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  /** The most that the value may be; null where it is only told. */
  readonly target: number | null;
  readonly met: boolean;
};

const DIGITS = 3;

/**
 * A measurement, rounded to three digits for reading after it was held against its target.
 *
 * @param of what was measured
 * @returns the measurement with its verdict
 */
export function measurement(of: Omit<Measurement, "met">): Measurement {
  const met = of.target === null || of.value <= of.target;
  return { ...of, value: Number(of.value.toPrecision(DIGITS)), met };
}

/**
 * The value that a share of the sample does not exceed: the nearest rank.
 *
 * @param sample measured values, in any order
 * @param share 0 to 1
 */
export function nearestRank(sample: readonly number[], share: number): number {
  const sorted = [...sample].sort((a, b) => a - b);
  const value = sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)];
  if (value === undefined) throw new RangeError("nearestRank requires at least one value, got none");
  return value;
}
