import { AGEING, type AgeingClass, type AgeingSettings, ageingClass } from "#lib/cartons/keeping/ageing";
import { type CartonUse, cartonUse, type UseDay } from "#lib/cartons/keeping/carton-use";
import { cover } from "#lib/cartons/keeping/cover";
import { type KeepFigure, keepFigure } from "#lib/cartons/keeping/keep-figure";
import { type Day, daysBetween, maxDay } from "#lib/units/day";
import { type CostValue, costValue } from "#lib/units/money";

const WEEK_DAYS = 7;
const PER_MILLE = 1_000;

/** A size of carton on the shelf, and what is known of it. */
export type ShelvedCarton = {
  /** cartons; null where never counted */
  readonly onHand: number | null;
  /** cartons on their way, from zero */
  readonly onOrder: number;
  /** use on record, in any order */
  readonly useDays: readonly UseDay[];
  /** the first day whose use would be on record */
  readonly watchedFrom: Day;
  /** price of one today, 1/10,000 minor unit; null where unknown */
  readonly unitCost: CostValue | null;
  /** what one brings when it goes, 1/10,000 minor unit; below zero where that costs money */
  readonly salvage: CostValue;
  /** a cost for each order, 1/10,000 minor unit */
  readonly orderCost: CostValue;
  /** cartons bought at a time, above zero */
  readonly lot: number;
  /** room of one carton as it is kept, millilitres; null where unknown */
  readonly roomMl: number | null;
};

/** How a shop judges its cartons. */
export type IdleTerms = {
  readonly today: Day;
  /** holding a year, thousandths of the price, above zero */
  readonly holdingPerMille: number;
  readonly ageing?: AgeingSettings;
  /** open days from a day until another; all days where the shop never closes */
  readonly openDays?: (from: Day, until: Day) => number;
};

/** What a carton that may sit was used for, holds, and what it pays to keep of it. */
export type IdleCarton = {
  readonly use: CartonUse;
  /** whole open weeks since it was last used, or since it is watched */
  readonly silentWeeks: number;
  /** null where nothing was used in 13 weeks, or nothing was counted */
  readonly monthsOfCover: number | null;
  /** 1/10,000 minor unit; null where stock or price is unknown */
  readonly money: CostValue | null;
  /** null where stock or room is unknown */
  readonly roomMl: number | null;
  readonly ageing: AgeingClass;
  readonly figure: KeepFigure;
};

/**
 * What of a carton size moves and what sits: its use of late, how long it lasts, the money and room that it holds, its
 * class and how many it pays to keep. Months of cover are over 13 weeks, the keep figure over a year, so that a size
 * used at the peak only is not let go in summer.
 *
 * @param carton stock, use, prices and room
 * @param terms today, holding cost, the bounds of the classes and the shop's open days
 * @throws RangeError if a use lies after today, or the lot or the holding cost is not above zero
 * @see retention, cover and ageingClass
 * @example idleCarton(carton, { today: day("2026-11-26"), holdingPerMille: 200 }).figure // { kind: "letGo", keep: 12, ... }
 */
export function idleCarton(carton: ShelvedCarton, terms: IdleTerms): IdleCarton {
  const { onHand, onOrder, unitCost, salvage, orderCost, lot } = carton;
  const { today, holdingPerMille, ageing = AGEING, openDays = daysBetween } = terms;
  if (!(lot > 0 && holdingPerMille > 0)) {
    throw new RangeError(
      `idleCarton requires a lot and a holding cost above zero, got ${lot} and ${holdingPerMille}`,
    );
  }
  const use = cartonUse(carton.useDays, carton.watchedFrom, today);
  const since = use.lastUsed === null ? carton.watchedFrom : maxDay(use.lastUsed, carton.watchedFrom);
  const silentWeeks = Math.floor(openDays(since, today) / WEEK_DAYS);
  const held = onHand === null ? null : Math.max(0, onHand);
  const monthsOfCover =
    held === null ? null : (cover({ onHand: held, onOrder, weeklyUse: use.weekly })?.months ?? null);
  return {
    use,
    silentWeeks,
    monthsOfCover,
    money: held === null || unitCost === null ? null : costValue(Math.round(held * unitCost)),
    roomMl: held === null || carton.roomMl === null ? null : held * carton.roomMl,
    ageing: ageingClass({ silentWeeks, coverMonths: monthsOfCover, wasUsed: use.lastUsed !== null }, ageing),
    figure: keepFigure({
      ...{ onHand, unitCost, salvage, orderCost, lot },
      yearlyUse: use.yearly,
      watchedDays: use.watchedDays,
      holdingRate: holdingPerMille / PER_MILLE,
    }),
  };
}
