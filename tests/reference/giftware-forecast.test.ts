// Parcels: Online Retail, UCI Machine Learning Repository, D. Chen, 2015, doi 10.24432/C5BW33, CC BY 4.0
// (https://doi.org/10.24432/C5BW33); see data/README.md.
import { describe, expect, it } from "vitest";
import { pooledForecast } from "#lib/forecast/pooled-forecast";
import {
  coverage,
  giftwareWeeks,
  movingAverageQuantiles,
  QUESTION,
  saidAtEveryOrigin,
  scaledPinballLoss,
} from "./giftware-weeks";

const weeks = giftwareWeeks();
const baseline = saidAtEveryOrigin(weeks, movingAverageQuantiles);

describe("the next three weeks of real giftware parcels, forecast from every week", () => {
  it("reads 53 whole weeks of 14 item types, the closed week as zero", () => {
    expect(weeks.types.length).toBe(14);
    for (const pieces of weeks.pieces) expect(pieces.length).toBe(53);
    // Closed from 24 December 2010 to 3 January 2011: the week of Monday, 27 December.
    expect(weeks.pieces.map((pieces) => pieces[4])).toEqual(weeks.types.map(() => 0));
    expect(baseline.map((said) => said.length)).toEqual(weeks.types.map(() => 38));
  });

  // 0.409 and 83 % were computed apart from this code, with numpy.
  it("scores the moving average with a normal safety stock as an independent calculation did", () => {
    expect(scaledPinballLoss(weeks, baseline)).toBeCloseTo(0.409, 3);
    expect(coverage(baseline)).toBeCloseTo(0.83, 2);
  });

  it("by pooling comes at least 22 % closer than the moving average, and is right as often as it says", () => {
    const pooled = saidAtEveryOrigin(weeks, (seen) =>
      pooledForecast(seen, QUESTION.steps).quantiles(QUESTION.chance),
    );
    expect(scaledPinballLoss(weeks, pooled) / scaledPinballLoss(weeks, baseline)).toBeLessThanOrEqual(0.78);
    expect(coverage(pooled)).toBeGreaterThanOrEqual(0.92);
    expect(coverage(pooled)).toBeLessThanOrEqual(0.98);
  });
});
