/**
 * Strips of household tape that hold wraps and guards.
 *
 * @param bound - whole wraps and guards, from zero
 * @param strips - strips for each wrap and each guard, whole, from zero
 * @returns strips
 * @throws RangeError if a number is not whole from zero
 * @see common practice, no source: enough to hold, not to mummify
 * @example tapeStrips({ wraps: 1, guards: 1 }, { perWrap: 3, perGuard: 1 }) // 4
 */
export function tapeStrips(
  bound: { readonly wraps: number; readonly guards: number },
  strips: { readonly perWrap: number; readonly perGuard: number },
): number {
  const numbers = [bound.wraps, bound.guards, strips.perWrap, strips.perGuard];
  const wrong = numbers.find((each) => !Number.isSafeInteger(each) || each < 0);
  if (wrong !== undefined) throw new RangeError(`tapeStrips requires whole numbers from zero, got ${wrong}`);
  return bound.wraps * strips.perWrap + bound.guards * strips.perGuard;
}
