import {
  type LeastSquaresAnswer,
  type LeastSquaresQuestion,
  leastSquares,
} from "#lib/statistics/least-squares";

/**
 * The best of the searches from several starts: a sum of squared errors can have more than one valley.
 *
 * @param question residuals and bounds, as in `leastSquares`
 * @param starts at least one
 * @returns where the best search ended; the first of equals
 * @throws RangeError when there is no start
 */
export function bestSearch(
  question: Omit<LeastSquaresQuestion, "start">,
  starts: readonly (readonly number[])[],
): LeastSquaresAnswer {
  const [first, ...others] = starts.map((start) => leastSquares({ ...question, start }));
  if (first === undefined) throw new RangeError("bestSearch requires a start, got none");
  return others.reduce((least, found) => (found.sumOfSquares < least.sumOfSquares ? found : least), first);
}
