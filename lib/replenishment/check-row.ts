import type { WeekUse } from "#lib/forecast/weekly-use";
import type { Arrival } from "#lib/replenishment/run-out";
import type { Amount } from "#lib/units/amount";
import type { Day } from "#lib/units/day";
import type { UseUnit } from "#lib/units/use-unit";

/** What to do about a supply, most urgent first but for `count`, which may be anything. */
export type CheckAction =
  | "order-today"
  | "order-this-week"
  | "count"
  | "on-its-way"
  | "order-later"
  | "enough"
  | "no-use";

/** One step of how a number came about, for a person to do again by hand. */
export type ExplanationLine = { readonly label: string; readonly value: string; readonly note: string };

/** What an offer would be ordered at: whole packs and their price together, minor units, null when unknown. */
export type OfferPacks = {
  readonly offerId: string;
  readonly pack: string;
  readonly packs: number;
  readonly priceMinor: number | null;
};

/** What the weekly check says of one supply. Amounts are of the row's unit. */
export type CheckRow = {
  readonly supplyId: string;
  readonly supply: string;
  readonly unit: UseUnit;
  /** null when never counted */
  readonly onHand: Amount | null;
  readonly onOrder: Amount;
  readonly countedOn: Day | null;
  /** on hand and what comes within the protection interval; null where stock is not known */
  readonly position: Amount | null;
  /** how far the book may be off since the last count: a typical error; null where stock or use are not known */
  readonly bookError: Amount | null;
  /** null when not used in 26 weeks */
  readonly usePerWeek: Amount | null;
  readonly method: string;
  /** recorded use, before any correction by counts */
  readonly weeks: readonly WeekUse[];
  readonly protectionDays: number;
  readonly leadTimeDays: number;
  readonly expectedUse: Amount | null;
  /** typical error of the forecast of the use over the protection interval */
  readonly errorDeviation: Amount | null;
  /** below 0 where the goal lets so much be missing */
  readonly safetyStock: number | null;
  readonly reorderPoint: Amount | null;
  /** days of use that are on hand, rounded down */
  readonly daysOfCover: number | null;
  /** chance, 0 to 1, of running out before an order placed today comes; null where stock or use are not known */
  readonly oddsToday: number | null;
  /** the same for an order placed at the next check */
  readonly oddsNextCheck: number | null;
  /** first day by which stock has ended with more than the chance that the goal lets be, with what is on order */
  readonly carefulRunOutDate: Day | null;
  /** first day that starts with nothing left, with what is on order */
  readonly runOutDate: Day | null;
  /** first day with nothing left before what is on order comes */
  readonly shortFrom: Day | null;
  /** when an order placed today comes */
  readonly arrivalDate: Day;
  readonly arrivals: readonly Arrival[];
  readonly orderByDate: Day | null;
  /** the offer with the least price a unit */
  readonly offerId: string | null;
  readonly suggestedPacks: number | null;
  readonly packsByOffer: readonly OfferPacks[];
  readonly action: CheckAction;
  /** what is guessed, or null */
  readonly guess: string | null;
  readonly sentence: string;
  readonly explanation: readonly ExplanationLine[];
};
