import { join } from "node:path";
import type { CurvePoint } from "#lib/cartons/range/range-curve";
import type { CartonRange } from "#lib/cartons/range/range-of";
import type { RangeTable } from "#lib/cartons/range/range-table";
import { type ProcessWork, workInProcess } from "./work-in-process";

/** A table, how many sizes, and the time for all of it. */
export type RangeQuestion = { readonly table: RangeTable; readonly most: number; readonly seconds: number };

/** One range of up to so many sizes, or those of one to so many. */
export type RangeTask = RangeQuestion & { readonly kind: "range" | "curve" };

/**
 * Works a carton range out in a process of its own.
 *
 * @param question table, sizes, time
 * @returns the range to come; it rejects as that of `workInProcess`
 */
export function rangeInProcess(question: RangeQuestion): ProcessWork<CartonRange> {
  return workInProcess(rangeWork({ ...question, kind: "range" }, () => undefined));
}

/**
 * Works the ranges of one to so many sizes out in a process of its own.
 *
 * @param question table, sizes, time
 * @param told called after each range
 * @returns the ranges to come; it rejects as that of `workInProcess`
 */
export function curveInProcess(
  question: RangeQuestion,
  told: (point: CurvePoint) => void,
): ProcessWork<CurvePoint[]> {
  return workInProcess(rangeWork({ ...question, kind: "curve" }, told));
}

function rangeWork(task: RangeTask, told: (point: CurvePoint) => void) {
  const script = join(/* turbopackIgnore: true */ process.cwd(), "app", "solver", "run-range.ts");
  return { script, name: "carton range", task, seconds: task.seconds, told };
}
