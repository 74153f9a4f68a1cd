import { join } from "node:path";
import type { CartonTerms } from "#lib/cartons/cost/carton-cost";
import type { OfferedCarton } from "#lib/cartons/cost/packed-load";
import type { FitEffort } from "#lib/cartons/fit/fit-effort";
import type { Clearance } from "#lib/cartons/fit/fit-question";
import type { RangeLoad } from "#lib/cartons/range/cost-table";
import type { CurvePoint } from "#lib/cartons/range/range-curve";
import type { RangeSteps } from "#lib/cartons/range/range-steps";
import type { EarningSize } from "#lib/cartons/range/size-earns";
import type { Day } from "#lib/units/day";
import type { ListingPostage } from "../../pack/listing/likely-postage";
import { type ProcessWork, workInProcess } from "../../solver/work-in-process";

/** All that the ranges of a shop are worked out from, as plain values. */
export type ShopRangeTask = {
  readonly loads: readonly RangeLoad[];
  readonly offered: readonly OfferedCarton[];
  readonly terms: Omit<CartonTerms, "postage"> & {
    readonly clearance: Clearance;
    readonly effort: FitEffort;
  };
  readonly postage: ListingPostage;
  readonly shipDay: Day;
  /** places of today's sizes among those offered, and what is there of each */
  readonly today: readonly number[];
  readonly onHand: readonly (number | null)[];
  readonly most: number;
  readonly seconds: number;
};

/** What is told on the way: today's range first, then each of the best. */
export type ShopRangeTold =
  | {
      readonly kind: "today";
      readonly today: { readonly value: number; readonly unpackedParcels: number };
      readonly notProven: readonly number[];
    }
  | {
      readonly kind: "range";
      readonly point: CurvePoint;
      readonly earns: readonly EarningSize[];
      readonly steps: RangeSteps;
    };

/** Fits are searched for before the time of the ranges begins. */
const SECONDS_FOR_FITS = 120;

/**
 * Works the ranges of a shop out in a process of its own.
 *
 * @param task past parcels, sizes and prices
 * @param told called with today's range and each of the best as it is found
 * @returns the number of ranges to come; it rejects as that of `workInProcess`
 */
export function shopRangeInProcess(
  task: ShopRangeTask,
  told: (told: ShopRangeTold) => void,
): ProcessWork<number> {
  const script = join(/* turbopackIgnore: true */ process.cwd(), "app", "solver", "run-shop-range.ts");
  return workInProcess({
    script,
    name: "carton range",
    task,
    seconds: task.seconds + SECONDS_FOR_FITS,
    told,
  });
}
