import { describe, expect, it } from "vitest";
import { flatForecaster } from "#lib/forecast/methods/flat-forecaster";

describe("flat forecaster", () => {
  it("says one level for each coming step, and looks back with fewer values", () => {
    const forecaster = flatForecaster({
      values: [1, 5, 3],
      parameters: { share: 1 },
      errors: [4, -2],
      levelAfter: (seen) => Math.max(...seen) + seen.length,
      varianceGrowth: null,
    });
    // max(1, 5, 3) + 3 = 8; after one value 1 + 1 = 2
    expect(forecaster.forecast(2)).toEqual([8, 8]);
    expect(forecaster.forecastAfter(1, 3)).toEqual([2, 2, 2]);
    expect(forecaster).toMatchObject({ parameters: { share: 1 }, errors: [4, -2], varianceGrowth: null });
  });
});
