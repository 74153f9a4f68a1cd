import { mean, median } from "simple-statistics";
import type { WeighedParcel } from "#lib/packing/weight/weighed-parcel";
import { normalQuantile } from "#lib/statistics/normal-quantile";
import { studentTTails } from "#lib/statistics/student-t";
import type { Day } from "#lib/units/day";

/** "Since 3 May these weigh 6 % more than the card says, before it was 1 %." */
export type WeightDrift = {
  /** day of the first parcel that belongs to the new level */
  readonly since: Day;
  /** middle error as a share of the bill, since then and before; `before` is null where it was so from the start */
  readonly share: number;
  readonly before: number | null;
  /** parcels since then */
  readonly parcels: number;
};

/** Fewer parcels make no level. */
const LEAST_PARCELS = 6;
/** Errors count up to so many scales, so that one far-off parcel is no change. */
const CLIP = 2.5;
/** Median absolute deviation of a normal distribution is this many standard deviations. */
const DEVIATION_OF_MEDIAN = 1 / normalQuantile(0.75);
/** Chance of a difference this large where there is none, below which it is told; see `weightDrift` for what it promises. */
const RARE = 1e-5;
/** A smaller share of the bill is not worth a word. A guess. */
const LEAST_SHARE = 0.02;
/** The least scale of errors: a kitchen scale shows no more. */
const LEAST_SCALE = 0.002;
/** Looking farther back would make old changes hide new ones. */
const MOST_PARCELS = 300;

/**
 * Since when the parcels of a group weigh more or less than their bills say: the strongest split of the errors, clipped
 * and in time order, then the strongest one of what follows it, while a split is rarer than 1 in 100,000 by Student's t. Asked
 * after every parcel for 150 parcels without any change it is wrong in fewer than 1 of 100 groups (measured by the bench).
 *
 * @param parcels weighed parcels of one group, oldest first, without mistyped ones
 * @returns the present level, its day and size; null where the parcels weigh what the bill says, as far as can be told
 * @see E. S. Page (1955), A test for a change in a parameter; A. J. Scott and M. Knott (1974), binary splits (from memory)
 * @example weightDrift(parcels)?.since // the day from which they weigh more
 */
export function weightDrift(parcels: readonly WeighedParcel[]): WeightDrift | null {
  const recent = parcels.slice(-MOST_PARCELS);
  if (recent.length < LEAST_PARCELS) return null;
  const errors = recent.map(({ scaleMg, predictedMg }) => scaleMg / predictedMg - 1);
  let start = 0;
  let before: number | null = null;
  for (let split = strongestSplit(errors); split !== null; split = strongestSplit(errors.slice(start))) {
    before = median(errors.slice(start, start + split));
    start += split;
  }
  const level = errors.slice(start);
  const share = median(level);
  const since = recent[start];
  const { values, scale } = clippedErrors(level, share);
  const centre = share + scale * mean(values);
  const isStrong = isRare(
    (centre * Math.sqrt(values.length)) / (scale * deviationOf(values)),
    values.length - 1,
  );
  if (since === undefined || Math.abs(share) < LEAST_SHARE || !isStrong) return null;
  return { since: since.packedOn, share, before, parcels: level.length };
}

/** Place of the first error of the later part, or null if no split stands out. */
function strongestSplit(errors: number[]): number | null {
  if (errors.length < 2 * LEAST_PARCELS) return null;
  const { values } = clippedErrors(errors, median(errors));
  const total = values.reduce((all, value) => all + value, 0);
  const squares = values.reduce((all, value) => all + value * value, 0);
  const count = values.length;
  let best = { at: 0, score: 0 };
  let sum = 0;
  for (let at = 1; at <= count - LEAST_PARCELS; at += 1) {
    sum += values[at - 1] ?? 0;
    if (at < LEAST_PARCELS) continue;
    const [early, late] = [sum / at, (total - sum) / (count - at)];
    const rest = (squares - at * early * early - (count - at) * late * late) / (count - 2);
    const score = Math.abs(late - early) / Math.sqrt(rest * (1 / at + 1 / (count - at)));
    if (score > best.score) best = { at, score };
  }
  return isRare(best.score, count - 2) ? best.at : null;
}

/** Errors about a middle in robust scales, clipped. */
function clippedErrors(
  errors: readonly number[],
  middle: number,
): { readonly values: number[]; readonly scale: number } {
  const away = errors.map((error) => Math.abs(error - middle));
  const scale = Math.max(LEAST_SCALE, DEVIATION_OF_MEDIAN * median(away));
  return {
    values: errors.map((error) => Math.max(-CLIP, Math.min(CLIP, (error - middle) / scale))),
    scale,
  };
}

/** Whether a t lies so far out, on either side, as it hardly ever does by chance. */
function isRare(t: number, degrees: number): boolean {
  return 2 * studentTTails(-Math.abs(t), degrees).lower <= RARE;
}

function deviationOf(values: number[]): number {
  const middle = mean(values);
  return Math.sqrt(values.reduce((sum, value) => sum + (value - middle) ** 2, 0) / (values.length - 1));
}
