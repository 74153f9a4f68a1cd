/** A shoulder's height, to which one lifts safely: common practice, no source. */
const SHOULDER_UM = 1_400_000;

/**
 * How high a pile may be: as its board bears, and never above a shoulder, from where a carton falls on who lifts it down.
 *
 * @param cartons that the board bears, the lowest included
 * @param outsideHeightUm of one, micrometres
 * @returns words without a full stop
 */
export function pileWords(cartons: number, outsideHeightUm: number): string {
  const withinReach = Math.max(1, Math.floor(SHOULDER_UM / outsideHeightUm));
  if (cartons <= withinReach) return `${cartons} high`;
  return `${withinReach} high, no higher than your shoulder (its board would bear more)`;
}
