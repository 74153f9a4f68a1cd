import { type GridDistribution, gridOf } from "#lib/statistics/grid-distribution";
import { poissonProbability, poissonTails } from "#lib/statistics/poisson";

/** A Poisson count as a distribution, as far as a double can tell its chances from nothing. */
export function poissonGrid(mean: number): GridDistribution {
  const chances = [poissonProbability(0, mean)];
  while (poissonTails(chances.length - 1, mean).upper > 1e-17) {
    chances.push(poissonProbability(chances.length, mean));
  }
  return gridOf(1, chances);
}
