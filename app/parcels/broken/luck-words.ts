import type { BrokenInCommon } from "#lib/packing/breakage/broken-in-common";

const PER_CENT = 100;
/** Rarer than this is said as rarer than this. */
const RAREST = 1_000;

/**
 * How sure it is that a trait is more than luck, with the numbers that it rests on.
 *
 * @param common a trait of broken parcels
 * @returns one or two short sentences
 */
export function luckWords({ broken, parcels, others, low, high, byLuck, verdict }: BrokenInCommon): string {
  const counts = `${broken} of ${parcels}, against ${others.broken} of ${others.parcels} without`;
  const range = `truly between ${share(low)} and ${share(high)} %, 9 times in 10`;
  if (verdict !== "stands-out") return `${counts}; ${range}.`;
  const odds = Math.min(RAREST, Math.floor(1 / byLuck));
  return `${counts}; ${range}. Luck does so much less than once in ${odds} such tables.`;
}

function share(part: number): string {
  const percent = part * PER_CENT;
  return percent < 10 ? percent.toFixed(1).replace(/\.0$/, "") : percent.toFixed(0);
}
