const SHORTEST_MS = 5_000;
const LONGEST_MS = 5 * 60_000;

/**
 * How long kept parcels wait before they are sent again by themselves: twice as long after each try in vain.
 * @param tries in vain one after the other, from 1
 * @returns milliseconds, from 5 seconds to 5 minutes
 * @example outboxPause(3) // 20000
 */
export function outboxPause(tries: number): number {
  return Math.min(LONGEST_MS, SHORTEST_MS * 2 ** Math.max(0, tries - 1));
}
