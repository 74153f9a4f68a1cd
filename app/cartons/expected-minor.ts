import { expectedPostage, type ZoneShare } from "#lib/postage/expected-postage";
import type { ParcelSize } from "#lib/postage/parcel-size";
import type { RateCard } from "#lib/postage/rate-card";
import type { Day } from "#lib/units/day";

/** A parcel weighs within a tenth of what is reckoned, 9 times in 10: a guess of the spread. */
const SPREAD_SHARE = 0.1 / 1.645;

/**
 * Postage expected over a guessed spread of the weight and over the zones.
 *
 * @param massMg likely mass, milligrams
 * @param size that is charged
 * @param postage the card, null where none holds, and how many parcels go where
 * @param shipDay the day it would be sent
 * @returns minor units, not rounded; null where none is known
 */
export function expectedMinor(
  massMg: number,
  size: ParcelSize,
  { card, zones }: { readonly card: RateCard | null; readonly zones: readonly ZoneShare[] },
  shipDay: Day,
): number | null {
  if (card === null || zones.length === 0) return null;
  const expected = expectedPostage({
    card,
    zones,
    size,
    shipDay,
    spread: {
      kind: "normal",
      meanMg: massMg,
      deviationMg: SPREAD_SHARE * massMg,
      basis: { parcels: 0, isGuess: true },
    },
  });
  return expected.kind === "expected" ? expected.minor : null;
}
