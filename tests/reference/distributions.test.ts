import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { gammaDensity, gammaExpectedShortage, gammaTails } from "#lib/statistics/gamma";
import { gammaQuantile } from "#lib/statistics/gamma-quantile";
import { logGamma } from "#lib/statistics/log-gamma";
import {
  negativeBinomialExpectedShortage,
  negativeBinomialProbability,
  negativeBinomialTails,
} from "#lib/statistics/negative-binomial";
import { negativeBinomialQuantile } from "#lib/statistics/negative-binomial-quantile";
import { normalCumulative } from "#lib/statistics/normal-cumulative";
import { normalDensity } from "#lib/statistics/normal-density";
import { normalQuantile } from "#lib/statistics/normal-quantile";
import { poissonExpectedShortage, poissonProbability, poissonTails } from "#lib/statistics/poisson";
import { poissonQuantile } from "#lib/statistics/poisson-quantile";
import { studentTQuantile } from "#lib/statistics/student-t-quantile";
import { unitNormalLoss } from "#lib/statistics/unit-normal-loss";
import { unitNormalLossInverse } from "#lib/statistics/unit-normal-loss-inverse";

// data/distributions.json was made in R 4.2.2 (https://www.r-project.org) with pnorm, dnorm, qnorm, ppois,
// dpois, qpois, pnbinom, dnbinom, qnbinom, pgamma, dgamma, qgamma, lgamma and qt; 15 significant digits.
type Quantiles = { p: number[]; quantile: number[] };
type Discrete = Quantiles & { k: number[]; pmf: number[]; cdf: number[]; expectedShortage: number[] };
type Reference = {
  normal: Quantiles;
  normalCdf: { z: number[]; cdf: number[]; pdf: number[] };
  unitNormalLoss: { z: number[]; G: number[] };
  unitNormalLossNegative: { z: number[]; G: number[] };
  unitNormalLossInverse: { G: number[]; z: number[] };
  poisson: (Discrete & { lambda: number })[];
  negativeBinomial: (Discrete & { size: number; mu: number; prob: number; variance: number })[];
  gamma: (Quantiles & {
    shape: number;
    scale: number;
    mean: number;
    variance: number;
    x: number[];
    pdf: number[];
    cdf: number[];
    expectedShortage: number[];
    lgammaShape: number;
  })[];
  studentT: (Quantiles & { df: number })[];
};
const reference: Reference = JSON.parse(
  readFileSync(new URL("./data/distributions.json", import.meta.url), "utf8"),
);
const RELATIVE = 1e-9;

/** Each value of the function is that of R to 1e-9 of it; where R has 0, it is 0. */
function meets(at: readonly number[], expected: readonly number[], actual: (at: number) => number): void {
  expect(at.length).toBeGreaterThan(0);
  expect(expected).toHaveLength(at.length);
  at.forEach((point, index) => {
    const wanted = expected[index] ?? Number.NaN;
    const gap = Math.abs(actual(point) - wanted);
    expect(gap, `at ${point}: ${actual(point)} for ${wanted}`).toBeLessThanOrEqual(
      RELATIVE * Math.abs(wanted),
    );
  });
}

/** R gives a quantile of -0 in two places; as a count it is 0. */
const plainZero = (count: number): number => count + 0;

describe("the file of R", () => {
  it("has the parts and cases that are checked below, and no other", () => {
    expect(
      Object.entries(reference).map(([name, part]) => [name, Array.isArray(part) && part.length]),
    ).toEqual([
      ["meta", false],
      ["normal", false],
      ["normalCdf", false],
      ["unitNormalLoss", false],
      ["unitNormalLossNegative", false],
      ["unitNormalLossInverse", false],
      ["poisson", 12],
      ["negativeBinomial", 10],
      ["gamma", 9],
      ["studentT", 6],
    ]);
  });
});

describe("normal distribution against R", () => {
  const {
    normal,
    normalCdf,
    unitNormalLoss: loss,
    unitNormalLossNegative,
    unitNormalLossInverse: inverse,
  } = reference;

  it("has R's density, distribution function and quantile", () => {
    meets(normalCdf.z, normalCdf.pdf, normalDensity);
    meets(normalCdf.z, normalCdf.cdf, normalCumulative);
    meets(normal.p, normal.quantile, normalQuantile);
  });

  it("has R's unit normal loss above and below the mean, and its inverse", () => {
    meets(loss.z, loss.G, unitNormalLoss);
    meets(unitNormalLossNegative.z, unitNormalLossNegative.G, unitNormalLoss);
    meets(inverse.G, inverse.z, unitNormalLossInverse);
  });
});

describe("Poisson distribution against R", () => {
  it.each(reference.poisson)("has R's values with mean $lambda", (of) => {
    meets(of.k, of.pmf, (k) => poissonProbability(k, of.lambda));
    meets(of.k, of.cdf, (k) => poissonTails(k, of.lambda).lower);
    meets(of.k, of.expectedShortage, (k) => poissonExpectedShortage(k, of.lambda));
    expect(of.p.map((p) => poissonQuantile(p, of.lambda))).toEqual(of.quantile.map(plainZero));
  });
});

describe("negative binomial distribution against R", () => {
  it.each(reference.negativeBinomial)("has R's values with mean $mu and size $size", (of) => {
    const demand = { mean: of.mu, size: of.size };
    meets(of.k, of.pmf, (k) => negativeBinomialProbability(k, demand));
    meets(of.k, of.cdf, (k) => negativeBinomialTails(k, demand).lower);
    meets(of.k, of.expectedShortage, (k) => negativeBinomialExpectedShortage(k, demand));
    expect(of.p.map((p) => negativeBinomialQuantile(p, demand))).toEqual(of.quantile.map(plainZero));
  });

  it.each(reference.negativeBinomial)("has the mean $mu and the variance $variance when summed", (of) => {
    const demand = { mean: of.mu, size: of.size };
    const most = negativeBinomialQuantile(1 - 1e-15, demand);
    const counts = Array.from({ length: most + 1 }, (_, count) => count);
    const sum = (value: (count: number) => number) =>
      counts.reduce((total, count) => total + value(count), 0);
    const mean = sum((count) => count * negativeBinomialProbability(count, demand));
    const square = sum((count) => (count - of.mu) ** 2 * negativeBinomialProbability(count, demand));
    meets([0], [of.mu], () => mean);
    meets([0], [of.variance], () => square);
    meets([0], [of.prob ** of.size], () => negativeBinomialProbability(0, demand));
  });
});

describe("gamma distribution against R", () => {
  it.each(reference.gamma)("has R's values with shape $shape and scale $scale", (of) => {
    meets(of.x, of.pdf, (x) => gammaDensity(x, of));
    meets(of.x, of.cdf, (x) => gammaTails(x, of).lower);
    meets(of.x, of.expectedShortage, (x) => gammaExpectedShortage(x, of));
    meets(of.p, of.quantile, (p) => gammaQuantile(p, of));
    meets([of.shape], [of.lgammaShape], logGamma);
  });

  it.each(reference.gamma)("has R's mean $mean and variance $variance with shape $shape", (of) => {
    meets([0], [of.mean], (x) => gammaExpectedShortage(x, of));
    // E[X^2] / 2 is the integral of the expected shortage from 0; by midpoints in ln x, where it is smooth.
    const width = 0.02;
    const steps = Array.from({ length: 3000 }, (_, step) => Math.exp(-45 + width * (step + 0.5)) * of.mean);
    const half = steps
      .filter((x) => x < 60 * (of.mean + of.scale))
      .reduce((sum, x) => sum + width * x * gammaExpectedShortage(x, of), 0);
    meets([0], [of.variance], () => 2 * half - of.mean ** 2);
  });
});

describe("Student t distribution against R", () => {
  it.each(reference.studentT)("has R's quantiles with $df degrees of freedom", (of) => {
    meets(of.p, of.quantile, (p) => studentTQuantile(p, of.df));
  });
});
