import type { Amount } from "#lib/units/amount";

/** What a check said of a supply, and what came. */
export type SaidAndCame = {
  readonly supplyId: string;
  /** expected use until now, as it was said; null where none was */
  readonly expected: Amount | null;
  readonly used: Amount;
  /** whether the book reached nothing on a day since */
  readonly ranOut: boolean;
  readonly wasToOrder: boolean;
  readonly wasOrdered: boolean;
};

/** How a check turned out. */
export type CheckOutcome = {
  /** supplies whose use was expected, and those of them that came close */
  readonly expected: number;
  readonly close: number;
  /** used much more than expected, the most first */
  readonly more: readonly { readonly supplyId: string; readonly times: number }[];
  readonly ranOut: readonly string[];
  /** orders that were asked for, and those of them that were placed */
  readonly toOrder: number;
  readonly ordered: number;
};

/** Within a quarter more or less counts as close: a week of parcels is no more even than that. A guess, no source. */
const CLOSE_SHARE = 0.25;
/** More than so many times what was expected is worth a word. */
const MUCH_MORE = 1.5;

/**
 * How a check turned out: whose use came as expected, what ran out, which orders were placed.
 *
 * @param rows what was said of each supply and what came
 * @example checkOutcome([{ supplyId: "paper", expected, used: expected, ranOut: false, ... }]).close // 1
 */
export function checkOutcome(rows: readonly SaidAndCame[]): CheckOutcome {
  const known = rows.flatMap((row) =>
    row.expected === null || row.expected <= 0 ? [] : [{ ...row, times: row.used / row.expected }],
  );
  return {
    expected: known.length,
    close: known.filter(({ times }) => Math.abs(times - 1) <= CLOSE_SHARE).length,
    more: known
      .filter(({ times }) => times >= MUCH_MORE)
      .toSorted((a, b) => b.times - a.times)
      .map(({ supplyId, times }) => ({ supplyId, times })),
    ranOut: rows.filter(({ ranOut }) => ranOut).map(({ supplyId }) => supplyId),
    toOrder: rows.filter(({ wasToOrder }) => wasToOrder).length,
    ordered: rows.filter(({ wasToOrder, wasOrdered }) => wasToOrder && wasOrdered).length,
  };
}
