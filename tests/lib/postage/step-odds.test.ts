import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { priceLadder } from "#lib/postage/price-ladder";
import { stepOdds } from "#lib/postage/step-odds";
import { day } from "#lib/units/day";
import { plainCard } from "./rate-card-fixture";

const ladder = priceLadder(
  { card: plainCard(), zone: "home", size: null, shipDay: day("2026-11-25") },
  10_000_000,
);
const basis = { parcels: 4, isGuess: false };

describe("odds of the steps", () => {
  it("count past errors by the step that they lead to", () => {
    const errorsMg = [-100_000, 0, 100_000, 2_000_000, 4_000_000];
    const { steps, notCarried } = stepOdds(ladder, { basis, kind: "errors", predictedMg: 950_000, errorsMg });
    expect(steps.map(({ chance, minor }) => [Number(chance.toFixed(12)), minor])).toEqual([
      [0.4, 400],
      [0.2, 650],
      [0.4, 1100],
    ]);
    expect(notCarried).toBe(0);
  });

  it("and what is not carried add up to 1", () => {
    const spread = fc.record({
      basis: fc.constant(basis),
      kind: fc.constant("normal" as const),
      meanMg: fc.integer({ min: 100_000, max: 7_000_000 }),
      deviationMg: fc.integer({ min: 0, max: 900_000 }),
    });
    fc.assert(
      fc.property(spread, (each) => {
        const { steps, notCarried } = stepOdds(ladder, each);
        expect(steps.every(({ chance }) => chance >= 0)).toBe(true);
        expect(steps.reduce((sum, { chance }) => sum + chance, notCarried)).toBeCloseTo(1, 12);
      }),
    );
  });
});
