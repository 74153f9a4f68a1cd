import { type GridDistribution, gridOf, gridSum } from "#lib/statistics/grid-distribution";

/**
 * Distribution of the sum of so many independent amounts that are distributed alike.
 *
 * @param grid distribution of one of them
 * @param times a whole number from 0
 * @returns distribution of the sum on the same steps
 * @throws RangeError when the number is not whole or below 0
 * @example repeatedGrid(gridOf(1, [1, 1]), 2).chances // 0.25, 0.5, 0.25
 */
export function repeatedGrid(grid: GridDistribution, times: number): GridDistribution {
  if (!(Number.isSafeInteger(times) && times >= 0)) {
    throw new RangeError(`repeatedGrid requires a whole number from 0, got ${times}`);
  }
  let sum = gridOf(grid.step, [1]);
  for (let time = 0; time < times; time += 1) sum = gridSum(sum, grid);
  return sum;
}
