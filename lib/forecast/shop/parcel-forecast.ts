import { patternOfUse } from "#lib/forecast/pattern-of-use";
import { chosenOutlook } from "#lib/forecast/shop/chosen-outlook";
import { STEPS } from "#lib/forecast/shop/coming-path";
import { firstOrigin, plainestFirst } from "#lib/forecast/shop/plainest-first";
import type { ShopGround } from "#lib/forecast/shop/shop-ground";
import type { SubjectOutlook } from "#lib/forecast/shop/subject-forecast";

const HORIZON = 3;
/** k of a sum of weeks before it was looked back at; a guess, no source. */
const guessedDispersion = (step: number): number => 0.05 + 0.1 / step;

/**
 * Parcels of the whole shop in the coming weeks, once it has more than 8 full weeks.
 *
 * @param ground the shop's ground
 * @param serviceLevel chance of the quantile that the routes are compared by
 * @returns null where nothing was ever sent
 */
export function parcelForecast(ground: ShopGround, serviceLevel: number): SubjectOutlook | null {
  const sumOf = (each: (type: number) => number): number =>
    ground.types.reduce((sum, _, type) => sum + each(type), 0);
  const values = ground.weeks.map((_, place) => sumOf((type) => ground.types[type]?.parcels[place] ?? 0));
  const total = values.reduce((sum, value) => sum + value, 0);
  if (total <= 0) return null;
  const { shares } = ground.levelAfter(ground.weeks.length);
  const mixed = (factorOf: (type: number) => number): number =>
    sumOf((type) => (shares[type] ?? 0) * factorOf(type));
  const factors = ground.weeks.map((_, place) => mixed((type) => ground.types[type]?.factors[place] ?? 1));
  const comingFactors = ground.coming.map((_, week) =>
    mixed((type) => ground.types[type]?.comingFactors[week] ?? 1),
  );
  const pattern = patternOfUse(values);
  const pooled = Array.from({ length: STEPS }, (_, index) => guessedDispersion(index + 1));
  return chosenOutlook({
    routes: plainestFirst(values, pattern, HORIZON),
    values,
    horizon: HORIZON,
    chance: serviceLevel,
    perUse: 1,
    whole: true,
    pooled,
    firstOrigin: firstOrigin(values.length),
    weeks: ground.weeks,
    factors,
    coming: ground.coming,
    comingFactors,
    pattern,
  }).outlook;
}
