import { closeDatabase, openDatabase } from "#prisma/client";
import { weeklyCheckOn } from "#prisma/records/weekly-checks";
import { type Measurement, measurement, nearestRank } from "../../measurement";
import { GENERATED_TODAY } from "./generated-shop";

const WARM_UPS = 5;
const RUNS = 30;
const TARGET_MS = 100;
const TARGET_RATIO = 1.5;
const TARGET_ANEW_MS = 3_000;
const MEDIAN = 0.5;

/**
 * The time of a weekly check over two shops with the same days and supplies, one with ten times the parcels:
 * it reads daily figures, so parcels must not matter.
 *
 * @param small database of the shop with fewer parcels
 * @param large database of the shop with more
 */
export async function weeklyCheckSpeed(small: string, large: string): Promise<Measurement[]> {
  const area = "foundation";
  const few = await medianCheck(small);
  const many = await medianCheck(large);
  return [
    measurement({
      area,
      name: "weekly check, 10,000 parcels (median)",
      value: few.kept,
      unit: "ms",
      target: TARGET_MS,
    }),
    measurement({
      area,
      name: "weekly check, 100,000 parcels (median)",
      value: many.kept,
      unit: "ms",
      target: TARGET_MS,
    }),
    measurement({
      area,
      name: "weekly check, 100,000 to 10,000",
      value: many.kept / few.kept,
      unit: "times",
      target: TARGET_RATIO,
    }),
    measurement({
      area,
      name: "weekly check that has to make its forecast anew, 100,000 parcels",
      value: many.anew,
      unit: "ms",
      target: TARGET_ANEW_MS,
    }),
  ];
}

/** The first check makes the forecast, the later ones read it; median of those. */
async function medianCheck(file: string): Promise<{ readonly anew: number; readonly kept: number }> {
  const db = await openDatabase(file);
  try {
    const times: number[] = [];
    let anew = 0;
    for (let run = 0; run < WARM_UPS + RUNS; run += 1) {
      const began = performance.now();
      const check = await weeklyCheckOn(db, GENERATED_TODAY);
      const time = performance.now() - began;
      if (check === null || check.rows.length === 0)
        throw new Error("The generated shop gave no weekly check");
      if (run === 0) anew = time;
      if (run >= WARM_UPS) times.push(time);
    }
    return { anew, kept: nearestRank(times, MEDIAN) };
  } finally {
    await closeDatabase(db);
  }
}
