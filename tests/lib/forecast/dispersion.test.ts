import { describe, expect, it } from "vitest";
import { dispersion } from "#lib/forecast/dispersion";

describe("dispersion of counts", () => {
  it("is what the squared errors have above a Poisson count's, over the squared forecasts", () => {
    // ((20 - 10)² - 10 + (4 - 5)² - 5) / (10² + 5²) = (90 - 4) / 125
    const past = [
      { forecast: 10, actual: 20 },
      { forecast: 5, actual: 4 },
    ];
    expect(dispersion(past)).toBeCloseTo(86 / 125, 12);
  });

  it("takes off what uses that come whole spread by themselves", () => {
    // ((20 - 10)² - 3 × 10) / 10²
    expect(dispersion([{ forecast: 10, actual: 20 }], 3)).toBeCloseTo(0.7, 12);
  });

  it("is 0 for counts that lie closer than Poisson ones, and where nothing was forecast", () => {
    expect(dispersion([{ forecast: 10, actual: 11 }])).toBe(0);
    expect(dispersion([{ forecast: 0, actual: 3 }])).toBe(0);
    expect(dispersion([])).toBe(0);
  });
});
