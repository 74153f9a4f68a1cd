import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { weightTicks } from "#app/paper-or-bubble/[id]/weight-ticks.ts";
import { GRAM, POUND } from "../../../lib/cushioning/small-ways";

describe("round weights over a stretch", () => {
  it("are grams or kilograms in metric measures", () => {
    expect(weightTicks(0, 1_000 * GRAM, "metric")).toEqual(
      [0, 200, 400, 600, 800, 1_000].map((g) => g * GRAM),
    );
    expect(weightTicks(10 * GRAM, 1_070 * GRAM, "metric")).toEqual(
      [200, 400, 600, 800, 1_000].map((g) => g * GRAM),
    );
  });

  it("are quarters, halves and whole pounds in imperial measures", () => {
    expect(weightTicks(0.1 * POUND, 1.3 * POUND, "imperial")).toEqual(
      [0.25, 0.5, 0.75, 1, 1.25].map((lb) => Math.round(lb * POUND)),
    );
    expect(weightTicks(1.6 * POUND, 9.8 * POUND, "imperial")).toEqual(
      [2, 4, 6, 8].map((lb) => Math.round(lb * POUND)),
    );
  });

  it("are at most seven, within the stretch, for any parcel", () => {
    const end = fc.integer({ min: 0, max: 60_000 * GRAM });
    const span = fc.integer({ min: GRAM, max: 900_000 * GRAM });
    fc.assert(
      fc.property(end, span, fc.constantFrom("metric", "imperial"), (from, more, measures) => {
        const ticks = weightTicks(from, from + more, measures);
        expect(ticks.length).toBeLessThanOrEqual(7);
        // Within what was asked but for the rounding to a milligram.
        for (const [at, tick] of ticks.entries()) {
          expect(tick).toBeGreaterThanOrEqual(from - 1);
          expect(tick).toBeLessThanOrEqual(from + more + 1);
          expect(tick).toBeGreaterThan(ticks[at - 1] ?? -1);
        }
        if (more > 350 * GRAM) expect(ticks.length).toBeGreaterThanOrEqual(2);
      }),
    );
  });
});
