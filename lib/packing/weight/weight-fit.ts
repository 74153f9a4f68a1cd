import { type NestedMeans, type NestedVariances, nestedMeans } from "#lib/packing/weight/nested-means";
import { type WeighedParcel, weightGroupKey } from "#lib/packing/weight/weighed-parcel";
import { studentTLogDensity } from "#lib/statistics/student-t";

type NoiseOf = (groupKey: string, predictedMg: number) => number;

/** Parcel errors as shares of the bill: what is believed of each group, and how far single parcels lie off. */
export type WeightFit = {
  readonly means: NestedMeans;
  /** scale of a parcel's errors in its group, as a share of its bill; that of the shop for a group never met */
  readonly noiseOf: NoiseOf;
  /** degrees of freedom of the errors: few where some lie far off */
  readonly degrees: number;
  /** how far each parcel lies off its group, in scales, as if it had not been learned from */
  readonly errors: readonly { readonly error: number; readonly weight: number }[];
};

/**
 * What is known before any parcel, all guesses: the shop's bills are right within 3 %, an item type within 4 % of the
 * shop, a group within 2.5 % of its type, a parcel of 1 kg within 3 % of its group; and each has 25 g more or less that no
 * bill names (label, papers). Together nine in ten weigh at most about a tenth more than their bills, as common practice
 * has it.
 */
const LEVEL_VARIANCE = 0.03 ** 2;
const FIRST = { types: 0.04 ** 2, groups: 0.025 ** 2, noise: 0.03 ** 2 };
const EXTRA_DEVIATION_MG = 25_000;
/** How many types or groups, and how many parcels, the guesses count for. */
const SPREAD_COUNTS = 3;
const NOISE_COUNTS = 8;
const ROUNDS = 15;
/** Degrees of freedom are looked for once in so many rounds. */
const DEGREES_EVERY = 5;
/** The least scale of errors: a scale shows no more. */
const LEAST_NOISE = 0.002;
const DEGREES = [3, 4, 6, 10, 30];
/** Weight of the guess that degrees are 4, in units of log likelihood. */
const USUAL_DEGREES = 4;
const UNUSUAL_DEGREES_COST = 1;
/** A parcel never explains more than this of its own mean, or nothing is left to judge its error by. */
const MOST_LEVERAGE = 0.8;

/** Bill at which the scales of errors are kept: pieces and wraps differ one by one, so errors grow with its root. */
export const USUAL_BILL_MG = 1_000_000;

/**
 * Where an extra mass stands in the fit: 1 for a bill of 25 g, less for heavier ones.
 *
 * @param predictedMg milligrams by the bill, above 0
 * @example extraOf(250000) // 0.1
 */
export function extraOf(predictedMg: number): number {
  return EXTRA_DEVIATION_MG / predictedMg;
}

/**
 * The scale of a parcel's errors, from that of its group at the usual bill.
 *
 * @param usual scale at a bill of 1 kg, as a share of it
 * @param predictedMg milligrams by the bill, above 0
 * @returns as a share of this bill
 * @example noiseAt(0.03, 250000) // 0.06
 */
export function noiseAt(usual: number, predictedMg: number): number {
  return usual * Math.sqrt(USUAL_BILL_MG / predictedMg);
}

/**
 * Learns how parcels weigh beside their bills: error / bill = shop + extra mass / bill + item type + group + t-distributed
 * rest, all spreads estimated too. Paper use and board go by share of the bill; a label weighs the same on every parcel.
 * Far-off parcels count less by the weights of the t distribution.
 *
 * @param parcels weighed parcels without mistyped ones
 * @param counts how much each counts, 0 to 1
 * @returns the fit; without parcels the guesses alone
 * @see Lange, Little and Taylor (1989), Robust statistical modeling using the t distribution, JASA 84; the expectation
 * and maximisation steps of Dempster, Laird and Rubin (1977) (from memory)
 * @example weightFit([], []).degrees // 4
 */
export function weightFit(parcels: readonly WeighedParcel[], counts: readonly number[]): WeightFit {
  const rows = parcels.map((parcel, index) => ({
    typeKey: parcel.itemTypeId,
    groupKey: weightGroupKey(parcel),
    predictedMg: parcel.predictedMg,
    value: parcel.scaleMg / parcel.predictedMg - 1,
    extra: extraOf(parcel.predictedMg),
    count: counts[index] ?? 1,
  }));
  let spread: NestedVariances = { ...FIRST, level: LEVEL_VARIANCE, slope: 1 };
  let noise = noiseBy(new Map(), FIRST.noise);
  let degrees = USUAL_DEGREES;
  let trusts = rows.map(() => 1);
  const nested = (): NestedMeans =>
    nestedMeans(
      rows.map((row, index) => ({
        ...row,
        precision: (row.count * (trusts[index] ?? 1)) / noise(row.groupKey, row.predictedMg) ** 2,
      })),
      spread,
    );
  let means = nested();
  for (let round = 0; round < ROUNDS; round += 1) {
    const believed = rows.map((row) => means.of(row));
    const squares = rows.map((row, index) => {
      const { mean, variance } = believed[index] ?? { mean: 0, variance: 0 };
      return (row.value - mean) ** 2 + variance;
    });
    trusts = rows.map((row, index) =>
      trustOf((squares[index] ?? 0) / noise(row.groupKey, row.predictedMg) ** 2, degrees),
    );
    noise = newNoise(rows, squares, trusts);
    spread = {
      ...spread,
      types: spreadOf(means.typeParts, FIRST.types),
      groups: spreadOf(means.groupParts, FIRST.groups),
    };
    if ((round + 1) % DEGREES_EVERY === 0) {
      degrees = likeliestDegrees(
        rows.map((row, index) => ({
          z: (row.value - (believed[index]?.mean ?? 0)) / noise(row.groupKey, row.predictedMg),
          count: row.count,
        })),
      );
    }
    means = nested();
  }
  return {
    means,
    noiseOf: noise,
    degrees,
    errors: rows.map((row, index) => {
      const scale = noise(row.groupKey, row.predictedMg);
      const { mean, variance } = means.of(row);
      const leverage = Math.min(MOST_LEVERAGE, (row.count * (trusts[index] ?? 1) * variance) / scale ** 2);
      return { error: (row.value - mean) / (scale * Math.sqrt(1 - leverage)), weight: row.count };
    }),
  };
}

function noiseBy(groups: ReadonlyMap<string, number>, shop: number): NoiseOf {
  return (groupKey, predictedMg) =>
    noiseAt(Math.max(LEAST_NOISE, Math.sqrt(groups.get(groupKey) ?? shop)), predictedMg);
}

function trustOf(square: number, degrees: number): number {
  return (degrees + 1) / (degrees + square);
}

/** Scales of groups for the usual bill, drawn towards that of the shop while their parcels are few. */
function newNoise(
  rows: readonly { readonly groupKey: string; readonly predictedMg: number; readonly count: number }[],
  squares: readonly number[],
  trusts: readonly number[],
): NoiseOf {
  const sums = new Map<string, { count: number; square: number }>();
  const shop = { count: NOISE_COUNTS, square: NOISE_COUNTS * FIRST.noise };
  for (const [index, { groupKey, predictedMg, count }] of rows.entries()) {
    const square = ((squares[index] ?? 0) * predictedMg) / USUAL_BILL_MG;
    const group = sums.get(groupKey) ?? { count: 0, square: 0 };
    sums.set(groupKey, group);
    for (const sum of [group, shop]) {
      sum.count += count;
      sum.square += count * (trusts[index] ?? 1) * square;
    }
  }
  const common = shop.square / shop.count;
  return noiseBy(
    new Map(
      [...sums].map(([key, { count, square }]) => [
        key,
        (NOISE_COUNTS * common + square) / (NOISE_COUNTS + count),
      ]),
    ),
    common,
  );
}

function spreadOf(parts: NestedMeans["typeParts"], first: number): number {
  const squares = parts.reduce((sum, { mean, variance }) => sum + mean * mean + variance, 0);
  return (SPREAD_COUNTS * first + squares) / (SPREAD_COUNTS + parts.length);
}

function likeliestDegrees(errors: readonly { readonly z: number; readonly count: number }[]): number {
  const scores = DEGREES.map((degrees) => ({
    degrees,
    score: errors.reduce(
      (sum, { z, count }) => sum + count * studentTLogDensity(z, degrees),
      degrees === USUAL_DEGREES ? UNUSUAL_DEGREES_COST : 0,
    ),
  }));
  return scores.reduce((best, each) => (each.score > best.score ? each : best)).degrees;
}
