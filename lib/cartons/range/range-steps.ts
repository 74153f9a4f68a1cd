import { rangeCost } from "#lib/cartons/range/range-cost";
import type { RangeTable } from "#lib/cartons/range/range-table";

/** A size that goes: its stock is used up first, and no more is bought. */
export type LeavingSize = {
  readonly size: number;
  /** cartons to run down, 0 where it can stop at once; null where they were never counted */
  readonly onHand: number | null;
};

/** One step from today's range to another. */
export type RangeStep = {
  /** size to buy from now on, or null */
  readonly buy: number | null;
  /** size to run down and to buy no more, or null */
  readonly leave: LeavingSize | null;
  /** what a year's parcels cost after it, 1/10,000 minor units */
  readonly value: number;
  /** what the step changes, below zero where it saves */
  readonly change: number;
  /** parcels that fit none of the sizes after it */
  readonly unpackedParcels: number;
};

/** The way from one range to another. */
export type RangeSteps = {
  readonly beforeValue: number;
  readonly steps: readonly RangeStep[];
  /** whether no step makes the parcels dearer */
  readonly neverRises: boolean;
};

/**
 * The way from today's range to another, a size at a time: one comes as another goes, so that there are never more
 * kinds on the shelf than before or after. The step that leaves the total lowest comes first. Some step may still make
 * parcels dearer, and the answer says so.
 *
 * @param table what parcels cost in each candidate
 * @param today sizes that are stocked, each once
 * @param best sizes to end with, each once
 * @param onHand cartons of each candidate, null where they were never counted
 * @returns steps in order
 * @throws RangeError for a size that is no candidate or comes twice
 * @example rangeSteps(table, [0, 1], [0, 2], [10, 40, 0]).steps // [{ buy: 2, leave: { size: 1, onHand: 40 }, ... }]
 */
export function rangeSteps(
  table: RangeTable,
  today: readonly number[],
  best: readonly number[],
  onHand: readonly (number | null)[],
): RangeSteps {
  const beforeValue = rangeCost(table, today).value;
  rangeCost(table, best);
  const steps: RangeStep[] = [];
  let range = today;
  let value = beforeValue;
  for (;;) {
    const moves = movesTo(range, best).map((each) => ({ move: each, cost: rangeCost(table, each.range) }));
    const [first, ...others] = moves;
    if (first === undefined) break;
    const { move, cost } = others.reduce(
      (low, each) => (each.cost.value < low.cost.value ? each : low),
      first,
    );
    const leave = move.leave === null ? null : { size: move.leave, onHand: onHand[move.leave] ?? null };
    const change = cost.value - value;
    const { unpackedParcels } = cost;
    steps.push({ buy: move.buy, leave, value: cost.value, change, unpackedParcels });
    range = move.range;
    value = cost.value;
  }
  return { beforeValue, steps, neverRises: steps.every(({ change }) => change <= 0) };
}

type Move = { readonly buy: number | null; readonly leave: number | null; readonly range: readonly number[] };

function movesTo(range: readonly number[], best: readonly number[]): Move[] {
  const coming = best.filter((size) => !range.includes(size));
  const going = range.filter((size) => !best.includes(size));
  const buys = coming.length >= going.length ? coming : [...coming, null];
  const leaves = going.length >= coming.length ? going : [...going, null];
  return buys.flatMap((buy) =>
    leaves
      .filter((leave) => buy !== null || leave !== null)
      .map((leave) => ({
        buy,
        leave,
        range: [...range.filter((size) => size !== leave), ...(buy === null ? [] : [buy])],
      })),
  );
}
