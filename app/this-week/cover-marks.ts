import type { CheckRow } from "#lib/replenishment/weekly-check";
import { formatAmount } from "#lib/units/amount-text";
import { formatDay } from "#lib/units/day-text";
import { type CoverAxis, percentOn } from "./cover-axis";

/** Where the marks of one supply stand on the axis, in percent. */
export type CoverMarks = {
  /** The stock's reach: solid to the careful estimate, fading to the likely one. */
  readonly bar: { readonly careful: number; readonly likely: number } | null;
  readonly arrival: number;
  readonly onTheWay: readonly { readonly percent: number; readonly words: string }[];
  /** The same in words. */
  readonly words: string;
};

/**
 * The cover strip of one supply. Nothing is drawn where the stock is unknown or none, or no use is known that it
 * could last against; a supply whose stock
 * outlasts the axis reaches its end; where stock likely ends before what is on order comes, the bar ends too.
 *
 * @param row - a row of the weekly check
 * @param axis - the screen's time axis
 * @returns places in percent and the strip in words
 */
export function coverMarks(row: CheckRow, axis: CoverAxis): CoverMarks {
  const isDrawn = row.onHand !== null && row.onHand > 0 && row.usePerWeek !== null;
  const end = row.shortFrom ?? row.runOutDate;
  const likely = end === null ? 100 : percentOn(axis, end);
  const careful = row.carefulRunOutDate === null ? likely : percentOn(axis, row.carefulRunOutDate);
  const onTheWay = row.arrivals.map((arrival) => ({
    percent: percentOn(axis, arrival.expectedOn),
    words: `${formatAmount(arrival.amount, row.unit)} due ${formatDay(arrival.expectedOn)}`,
  }));
  const parts = [
    ...reachWords(row),
    `an order placed today arrives ${formatDay(row.arrivalDate)}`,
    ...onTheWay.map((mark) => mark.words),
  ];
  return {
    bar: isDrawn ? { careful: Math.min(careful, likely), likely } : null,
    arrival: percentOn(axis, row.arrivalDate),
    onTheWay,
    words: `${row.supply}: ${parts.join("; ")}.`,
  };
}

function reachWords(row: CheckRow): string[] {
  const { onHand, usePerWeek, carefulRunOutDate, runOutDate, shortFrom } = row;
  if (onHand === null) return ["stock unknown, never counted"];
  if (onHand <= 0) return ["no stock by the book"];
  if (usePerWeek === null) return ["no use known, so no end can be told"];
  if (runOutDate === null) return ["no end of the stock in sight"];
  const gap = shortFrom === null ? [] : [`likely gone by ${formatDay(shortFrom)}, before a delivery`];
  const careful = formatDay(carefulRunOutDate ?? runOutDate);
  return [`lasts until ${careful} by the careful estimate, likely until ${formatDay(runOutDate)}`, ...gap];
}
