import type { CountCorrection } from "#lib/forecast/count-correction";
import type { PatternOfUse } from "#lib/forecast/pattern-of-use";
import type { TriedRoute } from "#lib/forecast/route-choice";
import type { SumSpread } from "#lib/forecast/sum-spread";
import type { UsePath } from "#lib/forecast/use-path";
import type { Day } from "#lib/units/day";

/** What will be used or sold, and how sure that is. Pieces for item types, parcels for the shop, use units for supplies. */
export type SubjectForecast = {
  readonly path: UsePath;
  readonly spread: SumSpread;
  /** name of the route taken */
  readonly method: string;
  /** full weeks that it rests on */
  readonly weeksSeen: number;
  /** share of the number that is still a guess, 0 to 1 */
  readonly guessedShare: number;
  /** the item type whose rate a new one starts from */
  readonly likeId: string | null;
};

/** A sum as it would have been forecast then, and what came. */
export type SaidSum = {
  /** first day of the sum */
  readonly from: Day;
  readonly expected: number;
  /** a tenth of the sums should lie below, a tenth above */
  readonly low: number;
  readonly high: number;
  /** not exceeded with the wanted chance */
  readonly enough: number;
  readonly actual: number;
};

/** What a forecast was made from, and how it would have done. */
export type SubjectPast = {
  /** weeks of the sums below */
  readonly horizonWeeks: number;
  /** best first; none while there are too few weeks to look back */
  readonly tried: readonly TriedRoute[];
  /** oldest first */
  readonly said: readonly SaidSum[];
  /** null where nothing was used */
  readonly pattern: PatternOfUse | null;
};

/** A forecast with what it was made from. */
export type SubjectOutlook = { readonly coming: SubjectForecast; readonly past: SubjectPast };

/** A supply's forecast with what the counts say of the booked use. */
export type SupplyForecast = SubjectForecast & { readonly correction: CountCorrection };
