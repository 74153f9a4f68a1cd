/** What a market trader would say; other figures are said in percent. */
const PLAIN_WORDS: ReadonlyMap<number, string> = new Map([
  [-100, "nothing at all"],
  [-50, "half of the usual"],
  [0, "as much as usual"],
  [50, "half as much again"],
  [100, "twice as much"],
  [200, "three times as much"],
]);

/**
 * How much more or less an event lets go out, in words.
 *
 * @param percent more than usual; negative where it is less
 * @returns plain words where there are some, else the percent with its sign
 * @example upliftWords(50) // "half as much again"
 * @example upliftWords(-35) // "−35 %"
 */
export function upliftWords(percent: number): string {
  const signed = percent < 0 ? `−${-percent}` : `+${percent}`;
  return PLAIN_WORDS.get(percent) ?? `${signed} %`;
}
