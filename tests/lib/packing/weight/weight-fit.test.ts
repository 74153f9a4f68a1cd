import { describe, expect, it } from "vitest";
import { type WeighedParcel, weightGroupKey } from "#lib/packing/weight/weighed-parcel";
import { extraOf, weightFit } from "#lib/packing/weight/weight-fit";
import { evenRandom } from "#lib/statistics/even-random";
import { normalDraw } from "#lib/statistics/normal-draw";
import { day } from "#lib/units/day";

function parcel(itemTypeId: string, predictedMg: number, share: number): WeighedParcel {
  return {
    itemTypeId,
    cartonId: "cube-8",
    style: "paper",
    packedOn: day("2026-05-01"),
    predictedMg,
    scaleMg: predictedMg * (1 + share),
    unusual: false,
  };
}

function meanOf(parcels: readonly WeighedParcel[], itemTypeId: string, predictedMg: number): number {
  const fit = weightFit(
    parcels,
    parcels.map(() => 1),
  );
  const next = parcel(itemTypeId, predictedMg, 0);
  return fit.means.of({ typeKey: itemTypeId, groupKey: weightGroupKey(next), extra: extraOf(predictedMg) })
    .mean;
}

describe("weight fit", () => {
  it("without parcels is what was guessed: the bill is right", () => {
    const fit = weightFit([], []);
    expect(fit.degrees).toBe(4);
    expect(fit.noiseOf("any", 1e6)).toBeCloseTo(0.03, 12);
    expect(fit.means.of({ typeKey: "a", groupKey: "b", extra: 0.1 }).mean).toBe(0);
  });

  it("finds the location and scale of the t distribution with many parcels", () => {
    // Darwin's 15 differences of maize heights (from memory), taken as thousandths of the bill, each forty times.
    // SciPy 1.17.1: stats.t.fit(differences, fdf=3) gives location 26.8128 and scale 24.0404.
    const heights = [49, -67, 8, 16, 6, 23, 28, 41, 14, 29, 56, 24, 75, 60, -48];
    const parcels = Array.from({ length: 40 }, () => heights)
      .flat()
      .map((height) => parcel("maize", 1e9, height / 1000));
    const fit = weightFit(
      parcels,
      parcels.map(() => 1),
    );
    expect(fit.degrees).toBe(3);
    expect(1000 * meanOf(parcels, "maize", 1e9)).toBeCloseTo(26.8, 0);
    expect(1000 * fit.noiseOf(weightGroupKey(parcel("maize", 1e9, 0)), 1e9)).toBeCloseTo(24.0, 0);
  });

  it("draws a type with one parcel towards the shop", () => {
    const random = evenRandom(9);
    const many = Array.from({ length: 90 }, (_, at) =>
      parcel(`type-${at % 6}`, 1e6, 0.05 + 0.05 * normalDraw(random)),
    );
    const mean = meanOf([...many, parcel("new", 1e6, 0.2)], "new", 1e6);
    expect(mean).toBeGreaterThan(0.055);
    expect(mean).toBeLessThan(0.14);
  });

  it("tells a label of 25 g on every parcel from a share of the bill", () => {
    const random = evenRandom(4);
    const parcels = Array.from({ length: 300 }, (_, at) => {
      const bill = [200_000, 500_000, 1_000_000, 4_000_000][at % 4] ?? 1;
      return parcel(`type-${at % 4}`, bill, 0.02 + 25_000 / bill + 0.01 * normalDraw(random));
    });
    // Of an item type never met, so that only shop-wide learning can say it; types differ by nothing else here.
    const error = (bill: number) => bill * meanOf(parcels, "unknown", bill);
    expect((error(3_000_000) - error(300_000)) / 2_700_000).toBeGreaterThan(0.005);
    expect((error(3_000_000) - error(300_000)) / 2_700_000).toBeLessThan(0.035);
    expect(error(300_000)).toBeGreaterThan(15_000);
    expect(error(300_000)).toBeLessThan(45_000);
  });

  it("lets errors grow with the root of the bill within a group", () => {
    const fit = weightFit([], []);
    const grams = (bill: number) => bill * fit.noiseOf("mug", bill);
    expect(grams(4_000_000) / grams(1_000_000)).toBeCloseTo(2, 9);
  });

  it("counts a far-off parcel less than a usual one", () => {
    const usual = Array.from({ length: 20 }, (_, at) => parcel("mug", 1e6, 0.02 + 0.01 * Math.sin(at)));
    const before = meanOf(usual, "mug", 1e6);
    const near = meanOf([...usual, parcel("mug", 1e6, 0.05)], "mug", 1e6) - before;
    const far = meanOf([...usual, parcel("mug", 1e6, 0.5)], "mug", 1e6) - before;
    expect(near).toBeGreaterThan(0);
    expect(far).toBeLessThan(near);
  });

  it("judges a parcel's error as if it had not been learned from", () => {
    const parcels = Array.from({ length: 4 }, (_, at) => parcel("mug", 1e6, at === 0 ? 0.1 : 0));
    const fit = weightFit(
      parcels,
      parcels.map(() => 1),
    );
    const seen = 0.1 - meanOf(parcels, "mug", 1e6);
    const scale = fit.noiseOf(weightGroupKey(parcel("mug", 1e6, 0)), 1e6);
    expect(fit.errors[0]?.error).toBeGreaterThan(seen / scale);
  });
});
