import type { PromiseLine } from "./promise-lines";

const PER_CENT = 100;

/**
 * How often promises held, with what that says of the next ones.
 *
 * @param line counts and the interval of the share
 * @returns "3 of 4 kept; truly between 25 and 99 %, 9 times in 10", and how many were never weighed
 */
export function promiseWords({ made, kept, low, high, unweighed }: PromiseLine): string {
  const open = unweighed === 0 ? "" : `; ${unweighed} never weighed`;
  if (made === 0) return `none weighed yet, so none can be told${open}`;
  const range = `truly between ${Math.round(low * PER_CENT)} and ${Math.round(high * PER_CENT)} %, 9 times in 10`;
  return `${kept} of ${made} kept; ${range}${open}`;
}
