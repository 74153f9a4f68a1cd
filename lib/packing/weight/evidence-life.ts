import { type WeighedParcel, weightGroupKey } from "#lib/packing/weight/weighed-parcel";
import type { WeightFit } from "#lib/packing/weight/weight-fit";
import { extraOf } from "#lib/packing/weight/weight-fit";
import { studentTLogDensity } from "#lib/statistics/student-t";
import { type Day, daysBetween } from "#lib/units/day";

/** Days after which a parcel counts half; never, and shorter and shorter. */
const LIVES = [Number.POSITIVE_INFINITY, 360, 180, 90, 45, 25];
/** A shorter life must foresee the parcels better by this much log likelihood. */
const WORTH = 2;
/** A group may always wander by so much of the bill, or no life could show what it is good for. */
const LEAST_WANDER = 0.03;

/**
 * How fast what parcels say grows old: the life with which each parcel of a group was best foreseen from those before
 * it, the longest where it makes little difference.
 *
 * @param parcels weighed parcels, oldest first
 * @param fit of all of them, each counted in full
 * @returns days until a parcel counts half, infinite where nothing moves
 * @see West and Harrison, Bayesian Forecasting and Dynamic Models, discount factors (from memory)
 * @example evidenceLife([], weightFit([], [])) // Infinity
 */
export function evidenceLife(parcels: readonly WeighedParcel[], fit: WeightFit): number {
  let best = { life: Number.POSITIVE_INFINITY, score: Number.NEGATIVE_INFINITY };
  for (const life of LIVES) {
    const score = foresight(parcels, fit, life);
    if (score > best.score + WORTH) best = { life, score };
  }
  return best.life;
}

/**
 * How much a parcel counts after some days.
 *
 * @param packedOn when it was packed
 * @param today the day of the question
 * @param life days until it counts half; may be infinite
 * @returns 0 to 1
 * @example evidenceLeft(day("2026-01-01"), day("2026-01-31"), 30) // 0.5
 */
export function evidenceLeft(packedOn: Day, today: Day, life: number): number {
  return 0.5 ** (Math.max(0, daysBetween(packedOn, today)) / life);
}

/** Log likelihood of each parcel of a group, told from those of the group before it. */
function foresight(parcels: readonly WeighedParcel[], fit: WeightFit, life: number): number {
  const groups = new Map<string, { weight: number; sum: number; last: Day }>();
  let score = 0;
  for (const parcel of parcels) {
    const groupKey = weightGroupKey(parcel);
    const scale = fit.noiseOf(groupKey, parcel.predictedMg);
    const extra = extraOf(parcel.predictedMg);
    const usual = fit.means.of({ typeKey: parcel.itemTypeId, groupKey: "", extra }).mean;
    const value = parcel.scaleMg / parcel.predictedMg - 1 - usual;
    const before = groups.get(groupKey) ?? { weight: 0, sum: 0, last: parcel.packedOn };
    const left = evidenceLeft(before.last, parcel.packedOn, life);
    const precision = before.weight * left + 1 / LEAST_WANDER ** 2;
    const mean = (before.sum * left) / precision;
    const width = Math.sqrt(scale * scale + 1 / precision);
    const z = (value - mean) / width;
    score += studentTLogDensity(z, fit.degrees) - Math.log(width);
    const trust = (fit.degrees + 1) / (fit.degrees + z * z) / (scale * scale);
    groups.set(groupKey, {
      weight: before.weight * left + trust,
      sum: before.sum * left + trust * value,
      last: parcel.packedOn,
    });
  }
  return score;
}
