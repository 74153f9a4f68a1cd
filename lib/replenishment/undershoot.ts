import { type GridDistribution, gridOf } from "#lib/statistics/grid-distribution";

/**
 * How far stock has fallen below the reorder point when somebody looks: stock is seen at a check only, and one use
 * may take much. In the long run, with orders that are large beside the use between two checks, the chance of
 * having fallen u below is P(use > u) / E[use].
 *
 * @param use what is used between two checks
 * @param whole whether amounts come in whole steps; else a step stands for the half steps around it
 * @returns the distribution of the undershoot on the same steps; none where nothing is used. Its mean is
 *   E[D (D - 1)] / (2 E[D]) in whole steps, else E[D²] / (2 E[D])
 * @see Silver, Pyke and Thomas (2017), Inventory and Production Management in Supply Chains, chapter 7, undershoot;
 *   the limiting excess of a renewal process (from memory)
 * @example undershoot(gridOf(1, [0, 0, 1]), true).chances // 0.5, 0.5: of two a week the order goes out at s or one below
 */
export function undershoot(use: GridDistribution, whole: boolean): GridDistribution {
  const { step, chances } = use;
  const above = new Float64Array(chances.length);
  let rest = 0;
  for (let at = chances.length - 1; at >= 0; at -= 1) {
    const chance = chances[at] ?? 0;
    above[at] = whole ? rest : rest + chance / 2;
    rest += chance;
  }
  if (!whole) above[0] = (above[0] ?? 0) / 2;
  const isUsed = (chances[0] ?? 0) < 1;
  return isUsed ? gridOf(step, above) : gridOf(step, [1]);
}
