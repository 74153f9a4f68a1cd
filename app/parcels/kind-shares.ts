import type { KindCost, TwoCosts } from "#lib/packing/cost-by-kind";
import { minorOfCost, roundHalfEven, splitMinor } from "#lib/units/money";

/** A kind's part of a cost on both bases, whole minor units that add up to the cost shown. */
export type KindShare = { readonly cashMinor: number; readonly replacementMinor: number };

/**
 * Rounds what each kind cost so that the kinds add up to the rounded whole.
 *
 * @param kinds what each kind cost, 1/10,000 minor unit
 * @param total all together
 * @returns in the order of the kinds, minor units
 */
export function kindShares(kinds: readonly KindCost[], total: TwoCosts): readonly KindShare[] {
  const [cash, replacement] = (["cash", "replacement"] as const).map((basis) =>
    total[basis] > 0
      ? splitMinor(
          minorOfCost(total[basis], roundHalfEven),
          kinds.map((kind) => kind[basis]),
        )
      : [],
  );
  return kinds.map((_, index) => ({
    cashMinor: cash?.[index] ?? 0,
    replacementMinor: replacement?.[index] ?? 0,
  }));
}
