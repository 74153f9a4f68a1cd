/**
 * Measures a side of a block anew, in shares of the room's side. Whatever blocks go in a row in the room, their shares come
 * to at most 1 (a dual feasible function).
 *
 * @param sideUm - whole micrometres, above zero and at most the room
 * @param roomUm - whole micrometres
 * @returns 0 to 1
 */
export type LengthScale = (sideUm: number, roomUm: number) => number;

/** The plain share, side / room. */
export const plainShare: LengthScale = (sideUm, roomUm) => sideUm / roomUm;

/**
 * A scale on which sides a little over 1 / (k + 1) of the room count as 1 / k, because no more than k of them go in a row:
 * x for (k + 1) x whole, else floor((k + 1) x) / k.
 *
 * @param k - whole, from 1
 * @returns the scale
 * @see Fekete & Schepers (2001), New classes of fast lower bounds for bin packing problems, u(k); from memory
 * @example roundedShare(2)(40, 100) // 0.5
 */
export function roundedShare(k: number): LengthScale {
  return (sideUm, roomUm) => {
    const parts = (k + 1) * sideUm;
    return parts % roomUm === 0 ? sideUm / roomUm : Math.floor(parts / roomUm) / k;
  };
}

/**
 * A scale on which a long side counts as the whole room, and what could lie beside it as nothing: 1 over room - short, 0
 * under short, else the plain share. A row that holds a long one holds nothing else of at least `short`.
 *
 * @param shortUm - micrometres, above zero, at most half the room
 * @returns the scale
 * @see Fekete & Schepers (2001), U; after Martello & Toth (1990), bound L2; from memory
 * @example longAsWhole(30)(75, 100) // 1
 */
export function longAsWhole(shortUm: number): LengthScale {
  return (sideUm, roomUm) => {
    if (sideUm > roomUm - shortUm) return 1;
    return sideUm < shortUm ? 0 : sideUm / roomUm;
  };
}
