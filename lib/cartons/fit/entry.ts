/**
 * The entry of a list of whole numbers that must be there: a wrong place is an error, not a zero.
 *
 * @param list - whole numbers of 32 bits
 * @param place - from 0
 * @returns the entry
 * @throws RangeError if the list has no such place
 * @example entry(Int32Array.of(5, 7), 1) // 7
 */
export function entry(list: Int32Array, place: number): number {
  const found = list[place];
  if (found === undefined) throw new RangeError(`entry requires a place below ${list.length}, got ${place}`);
  return found;
}
