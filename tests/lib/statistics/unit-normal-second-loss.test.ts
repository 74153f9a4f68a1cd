import { describe, expect, it } from "vitest";
import { unitNormalLoss } from "#lib/statistics/unit-normal-loss";
import { unitNormalSecondLoss } from "#lib/statistics/unit-normal-second-loss";

describe("the second-order loss", () => {
  it("is the area under the unit normal loss", () => {
    for (const z of [-3, -1, 0, 0.5, 2, 4]) {
      const parts = 4000;
      const width = (12 - z) / parts;
      let area = unitNormalLoss(z) + unitNormalLoss(12);
      for (let part = 1; part < parts; part += 1)
        area += (part % 2 === 1 ? 4 : 2) * unitNormalLoss(z + part * width);
      expect(unitNormalSecondLoss(z)).toBeCloseTo((area * width) / 3, 11);
    }
  });

  it("is a quarter at the mean, and never below 0", () => {
    expect(unitNormalSecondLoss(0)).toBe(0.25);
    expect(unitNormalSecondLoss(40)).toBe(0);
    expect(() => unitNormalSecondLoss(Infinity)).toThrow(/finite number/);
  });
});
