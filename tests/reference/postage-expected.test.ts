import { describe, expect, it } from "vitest";
import { expectedPostage } from "#lib/postage/expected-postage";
import type { RateCard } from "#lib/postage/rate-card";
import type { WeightSpread } from "#lib/postage/weight-spread";
import { gridOf } from "#lib/statistics/grid-distribution";
import { normalCumulative } from "#lib/statistics/normal-cumulative";
import { day } from "#lib/units/day";
import { minorUnits } from "#lib/units/money";
import { plainBand, plainCard, stepUpTo, typed } from "../lib/postage/rate-card-fixture";

// Expected postage against an integral worked out here: price × density by the composite rule of Simpson, over each step.
// The card and the spreads are invented.

const GRAM = 1_000;
const basis = { parcels: 14, isGuess: false };
/** Grams and minor units, written again here for the integral. */
const PRICES = [
  [250, 310],
  [500, 365],
  [1000, 480],
  [2000, 725],
  [5000, 1190],
] as const;
const CARD = plainCard({
  bands: [
    plainBand(
      PRICES.map(([grams, minor]) => stepUpTo(String(grams), "g", [minor])),
      { beyond: { kind: "perFurther", each: typed("500", "g"), prices: [minorUnits(130)] } },
    ),
  ],
});

type Density = (grams: number) => number;

const gaussian =
  (mean: number, deviation: number): Density =>
  (x) =>
    Math.exp(-0.5 * ((x - mean) / deviation) ** 2) / (deviation * Math.sqrt(2 * Math.PI));
const lognormal =
  (median: number, sigma: number): Density =>
  (x) =>
    x <= 0 ? 0 : Math.exp(-0.5 * (Math.log(x / median) / sigma) ** 2) / (x * sigma * Math.sqrt(2 * Math.PI));

/** Composite rule of Simpson; any textbook of numerical analysis. */
function simpson(f: Density, from: number, to: number, parts = 4_000): number {
  const width = (to - from) / parts;
  let sum = f(from) + f(to);
  for (let at = 1; at < parts; at += 1) sum += (at % 2 === 1 ? 4 : 2) * f(from + at * width);
  return (sum * width) / 3;
}

/** The steps up to a weight that is never reached, further units and all. */
function stepsUntil(grams: number): readonly (readonly [upTo: number, minor: number])[] {
  const steps: [number, number][] = PRICES.map(([upTo, minor]) => [upTo, minor]);
  const most = Math.max(grams, 5000) + 1000;
  for (let upTo = 5500, minor = 1320; upTo <= most; upTo += 500, minor += 130) {
    steps.push([upTo, minor]);
  }
  return steps;
}

function integral(density: Density, lowest: number, until: number) {
  let mean = 0;
  let reached = 0;
  const upTo = new Map<number, number>();
  let from = lowest;
  for (const [limit, minor] of stepsUntil(until)) {
    if (limit > from) {
      const chance = simpson(density, from, limit);
      mean += chance * minor;
      reached += chance;
      from = limit;
    }
    upTo.set(limit, reached);
  }
  return { mean, upTo };
}

function expectedOf(spread: WeightSpread, card: RateCard = CARD) {
  const zones = [{ zone: "home", share: 1 }];
  const answer = expectedPostage({ card, zones, size: null, shipDay: day("2026-11-25"), spread });
  if (answer.kind !== "expected" || answer.minor === null) {
    throw new RangeError(`expectedOf requires a price, got ${answer.kind}`);
  }
  return { ...answer, minor: answer.minor };
}

describe("expected postage over a normal spread of weight", () => {
  it.each([
    [830, 60],
    [995, 40],
    [1000, 150],
    [480, 300],
    [4800, 400],
    [6200, 900],
  ])("of %s g ± %s g agrees with the integral, and so do the odds under each step", (mean, deviation) => {
    const spread = {
      basis,
      kind: "normal",
      meanMg: mean * GRAM,
      deviationMg: deviation * GRAM,
    } as const;
    const answer = expectedOf(spread);
    const known = integral(gaussian(mean, deviation), mean - 10 * deviation, mean + 10 * deviation);
    expect(Math.abs(answer.minor - known.mean)).toBeLessThan(1e-6);
    for (const { step, upTo } of answer.steps) {
      const grams = Number(step.upToNg.numerator) / Number(step.upToNg.denominator) / 1e9;
      expect(Math.abs(upTo - (known.upTo.get(grams) ?? Number.NaN)), `${grams} g`).toBeLessThan(1e-9);
    }
  });
});

describe("expected postage over a skewed spread of weight", () => {
  it.each([
    [700, 0.3],
    [1500, 0.5],
    [4000, 0.2],
  ])("lognormal about %s g with %s agrees with the integral", (median, sigma) => {
    const most = median * Math.exp(9 * sigma);
    const upTo = (mg: number) => (mg <= 0 ? 0 : normalCumulative(Math.log(mg / GRAM / median) / sigma));
    const answer = expectedOf({ basis, kind: "cumulative", upTo, topMg: most * GRAM });
    const known = integral(lognormal(median, sigma), 0, most);
    expect(Math.abs(answer.minor - known.mean)).toBeLessThan(1e-6);
  });

  it.each([
    [700, 0.3],
    [1500, 0.5],
    [4000, 0.2],
  ])(
    "on a grid of grams, lognormal about %s g with %s, agrees with the integral but for half a gram at each step",
    (median, sigma) => {
      const density = lognormal(median, sigma);
      const most = median * Math.exp(8 * sigma);
      const weights = Array.from({ length: Math.ceil(most) }, (_, grams) => density(grams));
      const answer = expectedOf({ basis, kind: "grid", grid: gridOf(GRAM, weights) });
      const known = integral(density, 0, most);
      // The grid puts the half gram above a limit under it: at most its chance times the rise of the price.
      const steps = stepsUntil(most);
      const slack = steps.reduce(
        (sum, [limit, minor], at) => sum + 0.5 * density(limit) * ((steps[at + 1]?.[1] ?? minor) - minor),
        0,
      );
      expect(Math.abs(answer.minor - known.mean)).toBeLessThan(slack * 1.01 + 1e-6);
      expect(slack).toBeLessThan(1);
    },
  );
});
