// Parcels: Online Retail, UCI Machine Learning Repository, D. Chen, 2015, doi 10.24432/C5BW33, CC BY 4.0
// (https://doi.org/10.24432/C5BW33); see data/README.md.
import { describe, expect, it } from "vitest";
import { giftwareForecasts } from "../../app/command-line/bench/forecast/giftware-forecast";
import {
  coverage,
  giftwarePieces,
  giftwareSupplyUse,
  movingAverageQuantiles,
  saidAtEveryOrigin,
  scaledPinballLoss,
} from "../../app/command-line/bench/forecast/giftware-weeks";

const forecastAfter = giftwareForecasts();
const pieces = giftwarePieces();
const use = giftwareSupplyUse();
const FORECASTING_MS = 240_000;

describe("the next three weeks of real giftware parcels, forecast from every week", () => {
  it("reads 53 whole weeks of 14 item types, the closed week as zero", () => {
    expect(pieces.names.length).toBe(14);
    for (const values of pieces.values) expect(values.length).toBe(53);
    // Closed from 24 December 2010 to 3 January 2011: the week of Monday, 27 December.
    expect(pieces.values.map((values) => values[4])).toEqual(pieces.names.map(() => 0));
  });

  // 0.409 and 83 % were computed apart from this code, with numpy.
  it("scores the moving average with a normal safety stock as an independent calculation did", () => {
    const plain = saidAtEveryOrigin(pieces, movingAverageQuantiles);
    expect(plain.map((said) => said.length)).toEqual(pieces.names.map(() => 38));
    expect(scaledPinballLoss(pieces, plain)).toBeCloseTo(0.409, 3);
    expect(coverage(plain)).toBeCloseTo(0.83, 2);
  });

  it.each([
    { what: "pieces of each item type", weeks: pieces, kind: "itemTypes" as const },
    { what: "use of each supply", weeks: use, kind: "supplies" as const },
  ])(
    "comes at least 22 % closer than the moving average for $what, and is right as often as it says",
    ({ weeks, kind }) => {
      const plain = saidAtEveryOrigin(weeks, movingAverageQuantiles);
      const own = saidAtEveryOrigin(weeks, (seen) => {
        const said = forecastAfter(seen[0]?.length ?? 0)[kind];
        return weeks.names.map((name) => said.get(name) ?? Number.NaN);
      });
      expect(scaledPinballLoss(weeks, own) / scaledPinballLoss(weeks, plain)).toBeLessThanOrEqual(0.78);
      expect(coverage(own)).toBeGreaterThanOrEqual(0.92);
      expect(coverage(own)).toBeLessThanOrEqual(0.98);
    },
    FORECASTING_MS,
  );
});
