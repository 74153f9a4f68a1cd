/** Residuals at given parameters. */
export type Residuals = (parameters: readonly number[]) => readonly number[];

/**
 * Every combination of one value from each list.
 *
 * @param lists of values, a list a parameter
 * @returns a point each; a single one without parameters where there is no list
 * @example combinations([[1, 2], [3]]) // [[1, 3], [2, 3]]
 */
export function combinations(lists: readonly (readonly number[])[]): number[][] {
  return lists.reduce<number[][]>(
    (rows, list) => rows.flatMap((row) => list.map((value) => [...row, value])),
    [[]],
  );
}

/**
 * The few points with the least sums of squares.
 *
 * @param points parameters each
 * @param residuals whose squares are added up
 * @param count how many points at most
 * @returns best first, those without a sum last
 */
export function leastOf(
  points: readonly (readonly number[])[],
  residuals: Residuals,
  count: number,
): (readonly number[])[] {
  return points
    .map((point) => {
      const sum = residuals(point).reduce((total, each) => total + each * each, 0);
      return { point, sum: Number.isNaN(sum) ? Number.POSITIVE_INFINITY : sum };
    })
    .toSorted((a, b) => a.sum - b.sum)
    .slice(0, count)
    .map(({ point }) => point);
}

/**
 * The best point of each first parameter, alpha in a smoothing: there is one valley for a slow level, another
 * for a quick one, and none is to be passed over.
 *
 * @param points parameters each, alpha first
 * @param residuals whose squares are added up
 * @returns a point for each alpha
 */
export function leastOfEachAlpha(
  points: readonly (readonly number[])[],
  residuals: Residuals,
): (readonly number[])[] {
  const alphas = [...new Set(points.map(([alpha]) => alpha))];
  return alphas.flatMap((alpha) =>
    leastOf(
      points.filter(([each]) => each === alpha),
      residuals,
      1,
    ),
  );
}
