/**
 * The word for counted units in the plural: only its first word changes.
 *
 * @param countUnit word of one, as typed with the supply
 * @returns word of several
 * @example countUnitWords("roll of 110 yd") // "rolls of 110 yd"
 */
export function countUnitWords(countUnit: string): string {
  const [first = "", ...rest] = countUnit.split(" ");
  const plural = /(s|x|ch|sh)$/i.test(first) ? `${first}es` : `${first}s`;
  return [plural, ...rest].join(" ");
}
