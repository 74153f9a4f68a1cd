import type { ClosedCalendar } from "#lib/forecast/open-days";
import type { PlannedEvent } from "#lib/forecast/planned-event";
import type { ShopWeek } from "#lib/forecast/shop-weeks";
import type { Day } from "#lib/units/day";

/** What the records know of one item type. Nothing unusual is in it. */
export type ItemTypeHistory = {
  readonly id: string;
  /** parcels that it led, a week of the shop */
  readonly parcels: readonly number[];
  readonly pieces: readonly number[];
  /** what was packed since the first day of records while no week is over */
  readonly firstDays: { readonly parcels: number; readonly pieces: number };
  /** pieces that go at once as a rule, from 1 */
  readonly piecesAtOnce: number;
  /** null where unknown */
  readonly massGrams: number | null;
};

/** What the records know of one supply, in use units; counts' correction applied. */
export type SupplyUseHistory = {
  readonly id: string;
  /** use a week of the shop as it would have been by today's recipes */
  readonly used: readonly number[];
  readonly firstDaysUsed: number;
  /** what today's recipes take for one piece of each item type, by the way it is packed lately */
  readonly perPiece: ReadonlyMap<string, number>;
  /** what one parcel takes as a rule; null where no recipe says it */
  readonly perUse: number | null;
  /** whether it is counted in whole pieces */
  readonly whole: boolean;
  /** weeks that the stock must last, a whole number from 1 */
  readonly horizonWeeks: number;
};

/** What the records know of a shop up to a day. */
export type ShopHistory = {
  readonly today: Day;
  /** 1 Monday to 7 Sunday */
  readonly weekStartsOn: number;
  readonly calendar: ClosedCalendar;
  /** weeks that are over, oldest first; every history has one number for each */
  readonly weeks: readonly ShopWeek[];
  /** days of records while no week is over, else 0 */
  readonly firstDays: number;
  readonly itemTypes: readonly ItemTypeHistory[];
  readonly events: readonly PlannedEvent[];
  /** parcels a week that the seller guesses; null without a guess */
  readonly guessedParcels: number | null;
  /** wanted chance that stock lasts, between 0 and 1 */
  readonly serviceLevel: number;
};
