import { giftwareRows } from "./giftware-ledger";

/** Pieces a week of each item type, all of one length, oldest first. */
export type GiftwareWeeks = { readonly types: readonly string[]; readonly pieces: readonly number[][] };

/** Sums of one item type over the coming weeks as a method said them, and what then came. */
export type Said = { readonly quantile: number; readonly actual: number };

/** A forecast of stock that lasts: for each item type the sum that is not exceeded with the chance asked for. */
export type QuantileForecast = (seen: readonly (readonly number[])[]) => readonly number[];

const FIRST_MONDAY = Date.parse("2010-11-29");
const MS_A_WEEK = 7 * 24 * 60 * 60 * 1000;

/** How the forecasts are asked for: from which week on, over how many weeks, with which chance. */
export const QUESTION = { firstOrigin: 13, steps: 3, chance: 0.95 } as const;

/** The parcels as weeks that begin on Mondays; the last, partial week is left out, a closed week counts as 0. */
export function giftwareWeeks(): GiftwareWeeks {
  const rows = giftwareRows().map((row) => ({
    ...row,
    week: Math.floor((Date.parse(row.on) - FIRST_MONDAY) / MS_A_WEEK),
  }));
  const partial = Math.max(...rows.map(({ week }) => week));
  const types = [...new Set(rows.map(({ type }) => type))].toSorted();
  const pieces = types.map((type) => {
    const weeks = new Array<number>(partial).fill(0);
    for (const row of rows) {
      if (row.type === type && row.week < partial) weeks[row.week] = (weeks[row.week] ?? 0) + row.pieces;
    }
    return weeks;
  });
  return { types, pieces };
}

/** What a forecast said at every origin, a list an item type. */
export function saidAtEveryOrigin({ pieces }: GiftwareWeeks, forecast: QuantileForecast): readonly Said[][] {
  const weeks = pieces[0]?.length ?? 0;
  const said = pieces.map((): Said[] => []);
  for (let origin = QUESTION.firstOrigin; origin + QUESTION.steps <= weeks; origin += 1) {
    const quantiles = forecast(pieces.map((values) => values.slice(0, origin)));
    for (const [index, values] of pieces.entries()) {
      const coming = values.slice(origin, origin + QUESTION.steps);
      const actual = coming.reduce((sum, value) => sum + value, 0);
      said[index]?.push({ quantile: quantiles[index] ?? Number.NaN, actual });
    }
  }
  return said;
}

/**
 * Mean over the item types of the pinball loss, each divided by the type's mean absolute change from week to
 * week over the whole series.
 */
export function scaledPinballLoss({ pieces }: GiftwareWeeks, said: readonly (readonly Said[])[]): number {
  return mean(
    pieces.map((values, index) => {
      const changes = values.slice(1).map((value, week) => Math.abs(value - (values[week] ?? 0)));
      return mean((said[index] ?? []).map(pinball)) / mean(changes);
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

function pinball({ quantile, actual }: Said): number {
  const gap = actual - quantile;
  return gap >= 0 ? QUESTION.chance * gap : (QUESTION.chance - 1) * gap;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
