import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dispersion, shrunkDispersion } from "#lib/forecast/dispersion";

describe("dispersion of counts", () => {
  it("is what the squared errors have above a Poisson count's, over the squared forecasts", () => {
    // ((20 - 10)² - 10 + (4 - 5)² - 5) / (10² + 5²) = (90 - 4) / 125
    const past = [
      { forecast: 10, actual: 20 },
      { forecast: 5, actual: 4 },
    ];
    expect(dispersion(past)).toBeCloseTo(86 / 125, 12);
  });

  it("is 0 for counts that lie closer than Poisson ones, and where nothing was forecast", () => {
    expect(dispersion([{ forecast: 10, actual: 11 }])).toBe(0);
    expect(dispersion([{ forecast: 0, actual: 3 }])).toBe(0);
    expect(dispersion([])).toBe(0);
  });
});

describe("dispersion drawn towards that of all item types", () => {
  const share = fc.double({ min: 0, max: 3, noNaN: true });

  it("weighs ten looks of its own as much as all types together", () => {
    expect(shrunkDispersion(0.4, 0.2, 10)).toBeCloseTo(0.3, 12);
    expect(shrunkDispersion(0.4, 0.2, 0)).toBe(0.2);
    // 30 / 40 of 0.4 and 10 / 40 of 0.2
    expect(shrunkDispersion(0.4, 0.2, 30)).toBeCloseTo(0.35, 12);
  });

  it("lies between the two, nearer to its own with more looks", () => {
    fc.assert(
      fc.property(share, share, fc.integer({ min: 0, max: 60 }), (own, pooled, looks) => {
        const found = shrunkDispersion(own, pooled, looks);
        expect(found).toBeGreaterThanOrEqual(Math.min(own, pooled) - 1e-12);
        expect(found).toBeLessThanOrEqual(Math.max(own, pooled) + 1e-12);
        const more = shrunkDispersion(own, pooled, looks + 1);
        expect(Math.abs(more - own)).toBeLessThanOrEqual(Math.abs(found - own) + 1e-12);
      }),
    );
  });
});
