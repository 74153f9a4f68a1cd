import { type ExpectedQuestion, expectedPostage } from "#lib/postage/expected-postage";
import { parcelSize } from "#lib/postage/parcel-size";
import type { RateCard } from "#lib/postage/rate-card";
import { type MixturePart, mixtureQuantile, mixtureUpTo } from "#lib/statistics/mixture";
import { MICROMETRES_PER_INCH, micrometres } from "#lib/units/length";

const ITEM_TYPES = 20;
const STYLES = 3;
const TOP_CHANCE = 0.999_999;
const GRAM = 1_000;
const SEEN = 40;

/**
 * A parcel of each item type in each style: 6 to 32 in long, 0.3 to 9 kg, its weight spread as it is learned from parcels.
 *
 * @param card of the shop
 */
export function benchQuestions(card: RateCard): ExpectedQuestion[] {
  return Array.from({ length: ITEM_TYPES * STYLES }, (_, at) => {
    const [type, style] = [Math.floor(at / STYLES), at % STYLES];
    const parts = weightParts(GRAM * (300 + 440 * type + 90 * style));
    const long = 6 + 1.25 * type + 0.5 * style;
    const um = [long, long * 0.7, long * 0.45].map((side) =>
      micrometres(Math.round(side * MICROMETRES_PER_INCH)),
    );
    return {
      card,
      size: parcelSize(um, null, "box"),
      shipDay: card.validFrom,
      zones: card.zones.map((zone, place) => ({ zone, share: 1 + place })),
      spread: {
        kind: "cumulative",
        upTo: (mg) => mixtureUpTo(parts, mg),
        topMg: mixtureQuantile(parts, TOP_CHANCE),
        basis: { parcels: 12, isGuess: false },
      },
    };
  });
}

/** Errors as they were seen, smoothed, and a t distribution beside them: as many parts as a learned weight has. */
function weightParts(likelyMg: number): MixturePart[] {
  const seen = Array.from({ length: SEEN }, (_, at) => ({
    weight: 0.7 / SEEN,
    centre: likelyMg * (1 + 0.1 * ((at + 0.5) / SEEN - 0.4)),
    scale: likelyMg * 0.012,
    degrees: null,
  }));
  return [{ weight: 0.3, centre: likelyMg, scale: likelyMg * 0.03, degrees: 4 }, ...seen];
}

/**
 * Asks them all.
 *
 * @throws RangeError if one has no answer, as a quick refusal would be no measurement
 */
export function askedAll(questions: readonly ExpectedQuestion[]): void {
  for (const question of questions) {
    const answer = expectedPostage(question);
    if (answer.kind !== "expected" || answer.minor === null) {
      throw new RangeError(`askedAll requires parcels that are carried, got ${answer.kind}`);
    }
  }
}
