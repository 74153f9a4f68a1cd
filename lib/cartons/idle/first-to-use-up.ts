import { type CandidateCarton, cartonStock, isToUseUp } from "#lib/cartons/choice/candidate-carton";

/** A carton that may sit, with what is known of it. */
export type ShelvedSize = Pick<CandidateCarton, "id" | "onHand" | "ageing" | "useFirst"> & {
  /** weeks since it was last used */
  readonly silentWeeks: number;
  /** recent parcels that could have gone in it */
  readonly fitting: number;
  /** that it holds, 1/10,000 minor unit; null where unknown */
  readonly moneyValue: number | null;
  /** that it holds, millilitres; null where unknown */
  readonly roomMl: number | null;
};

/** One line of the list: why it stands there. */
export type UseFirst = {
  readonly cartonId: string;
  readonly reason: "marked" | "sits";
  readonly fitting: number;
};

/**
 * In which order to use up what sits. The rule: what the seller marked comes first; then what is silent longest; of those,
 * what holds more money, then more room. Only sizes that are there, that sit or are marked, and that something fits.
 *
 * @param cartons all sizes of the shelf
 * @returns one line a size, in that order
 * @see common practice, no source
 * @example firstToUseUp(sizes)[0]?.cartonId // "cube-10"
 */
export function firstToUseUp(cartons: readonly ShelvedSize[]): readonly UseFirst[] {
  return cartons
    .filter((each) => isToUseUp(each) && cartonStock(each.onHand) !== "none" && each.fitting > 0)
    .toSorted(
      (a, b) =>
        Number(b.useFirst) - Number(a.useFirst) ||
        b.silentWeeks - a.silentWeeks ||
        (b.moneyValue ?? 0) - (a.moneyValue ?? 0) ||
        (b.roomMl ?? 0) - (a.roomMl ?? 0),
    )
    .map(({ id, useFirst, fitting }) => ({ cartonId: id, reason: useFirst ? "marked" : "sits", fitting }));
}
