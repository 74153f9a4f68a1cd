import { mean } from "simple-statistics";
import { pinballLoss } from "#lib/statistics/pinball-loss";
import { day, daysBetween } from "#lib/units/day";
import { type GiftwareRow, giftwareRows, giftwareShop, giftwareUse } from "./giftware-ledger";

/** A number a week of each item type or supply, all of one length, oldest first. */
export type GiftwareWeeks = {
  readonly names: readonly string[];
  readonly values: readonly (readonly number[])[];
};

/** Sums of one series over the coming weeks as a method said them, and what then came. */
export type Said = { readonly quantile: number; readonly actual: number };

/** A forecast of stock that lasts: for each series the sum that is not exceeded with the chance asked for. */
export type QuantileForecast = (seen: readonly (readonly number[])[]) => readonly number[];

/** How the forecasts are asked for: from which week on, over how many weeks, with which chance. */
export const QUESTION = { firstOrigin: 13, steps: 3, chance: 0.95 } as const;

/** The Monday on which the first week begins. */
export const FIRST_WEEK = day("2010-11-29");
const DAYS_A_WEEK = 7;
const TWELFTHS = 12;

/** How many weeks are whole: the last, partial one is left out. */
export function wholeWeeks(rows: readonly GiftwareRow[]): number {
  return Math.max(...rows.map(weekOf));
}

/** Pieces of each item type in weeks that begin on Mondays; a closed week counts as 0. */
export function giftwarePieces(): GiftwareWeeks {
  const rows = giftwareRows();
  const names = [...new Set(rows.map(({ type }) => type))].toSorted();
  const weeks = wholeWeeks(rows);
  const values = names.map((name) => {
    const pieces = new Array<number>(weeks).fill(0);
    for (const row of rows) {
      const week = weekOf(row);
      if (row.type === name && week < weeks) pieces[week] = (pieces[week] ?? 0) + row.pieces;
    }
    return pieces;
  });
  return { names, values };
}

/** Use of each supply in the same weeks, in use units, by the recipes of the invented shop. */
export function giftwareSupplyUse(): GiftwareWeeks {
  const rows = giftwareRows();
  const shop = giftwareShop();
  const uses = Array.from({ length: wholeWeeks(rows) }, (_, week) =>
    giftwareUse(
      shop,
      rows.filter((row) => weekOf(row) === week),
      "9999",
    ),
  );
  const names = shop.supplies.map(({ id }) => id);
  return { names, values: names.map((name) => uses.map((use) => (use.get(name) ?? 0) / TWELFTHS)) };
}

function weekOf({ on }: GiftwareRow): number {
  return Math.floor(daysBetween(FIRST_WEEK, day(on)) / DAYS_A_WEEK);
}

/** What a forecast said at every origin, a list a series. */
export function saidAtEveryOrigin({ values }: GiftwareWeeks, forecast: QuantileForecast): readonly Said[][] {
  const weeks = values[0]?.length ?? 0;
  const said = values.map((): Said[] => []);
  for (let origin = QUESTION.firstOrigin; origin + QUESTION.steps <= weeks; origin += 1) {
    const quantiles = forecast(values.map((each) => each.slice(0, origin)));
    for (const [index, each] of values.entries()) {
      const coming = each.slice(origin, origin + QUESTION.steps);
      const actual = coming.reduce((sum, value) => sum + value, 0);
      said[index]?.push({ quantile: quantiles[index] ?? Number.NaN, actual });
    }
  }
  return said;
}

/**
 * Mean over the series of the pinball loss, each divided by the series' mean absolute change from week to
 * week over the whole series.
 */
export function scaledPinballLoss({ values }: GiftwareWeeks, said: readonly (readonly Said[])[]): number {
  return mean(
    values.map((each, index) => {
      const changes = each.slice(1).map((value, week) => Math.abs(value - (each[week] ?? 0)));
      const losses = (said[index] ?? []).map(({ quantile, actual }) =>
        pinballLoss(quantile, actual, QUESTION.chance),
      );
      return mean(losses) / mean(changes);
    }),
  );
}

/** Share of the sums that the quantile was not below. */
export function coverage(said: readonly (readonly Said[])[]): number {
  return mean(said.flat().map(({ quantile, actual }) => (actual <= quantile ? 1 : 0)));
}

/**
 * What a shop does with a spreadsheet: the mean of the last 8 weeks, and a normal safety stock from the errors
 * that it made one week ahead.
 */
export function movingAverageQuantiles(seen: readonly (readonly number[])[]): number[] {
  const window = 8;
  // 95 % point of the normal distribution.
  const quantile = 1.6449;
  return seen.map((values) => {
    const errors = values
      .slice(window)
      .map((value, index) => value - mean(values.slice(index, index + window)));
    const deviation = Math.sqrt(mean(errors.map((error) => error * error)));
    return QUESTION.steps * mean(values.slice(-window)) + quantile * Math.sqrt(QUESTION.steps) * deviation;
  });
}
