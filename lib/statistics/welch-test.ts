import { mean, sampleVariance } from "simple-statistics";
import { studentTTails } from "#lib/statistics/student-t";

/** How far two means lie apart, and how often chance alone would set them so far apart, either way. */
type WelchTest = {
  readonly difference: number;
  readonly t: number;
  readonly degrees: number;
  readonly byLuck: number;
};

/**
 * Welch's test: whether two samples, spread differently, come from means that differ.
 *
 * @param first at least two numbers
 * @param second at least two numbers
 * @returns the mean of the second less that of the first in the unit of the numbers; t and its degrees of freedom; the
 *   two-sided chance. Without any spread the chance is 0, or 1 where the means are equal
 * @throws RangeError with fewer than two numbers in a sample
 * @see Welch (1947), The generalization of Student's problem when several different population variances are involved,
 * Biometrika 34; degrees of freedom after Satterthwaite (1946) (both from memory; the values are checked in the tests)
 * @example welchTest([1, 2, 3], [4, 5, 6]).t // 3.6742346
 */
export function welchTest(first: readonly number[], second: readonly number[]): WelchTest {
  if (first.length < 2 || second.length < 2) {
    throw new RangeError(`welchTest requires two numbers a sample, got ${first.length} and ${second.length}`);
  }
  const parts = [first, second].map((sample) => ({
    error: sampleVariance([...sample]) / sample.length,
    degrees: sample.length - 1,
  }));
  const difference = mean([...second]) - mean([...first]);
  const error = parts.reduce((sum, part) => sum + part.error, 0);
  if (error === 0) return withoutSpread(difference, first.length + second.length - 2);
  const degrees = error ** 2 / parts.reduce((sum, part) => sum + part.error ** 2 / part.degrees, 0);
  const t = difference / Math.sqrt(error);
  return { difference, t, degrees, byLuck: 2 * studentTTails(Math.abs(t), degrees).upper };
}

function withoutSpread(difference: number, degrees: number): WelchTest {
  return difference === 0
    ? { difference, t: 0, degrees, byLuck: 1 }
    : { difference, t: Math.sign(difference) * Number.POSITIVE_INFINITY, degrees, byLuck: 0 };
}
