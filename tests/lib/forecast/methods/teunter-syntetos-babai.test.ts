import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { teunterSyntetosBabai } from "#lib/forecast/methods/teunter-syntetos-babai";

const series = (values: readonly number[]) => ({ values, seasonLength: 1 });
const zeros = (count: number) => new Array<number>(count).fill(0);
const CONSTANTS = { alphaSize: 0.5, alphaChance: 0.2 };

describe("size and chance", () => {
  it("smooths the chance in every week and the size when there is a use", () => {
    // Starts with size 4 (the first use) and chance 2 of 4 weeks: says 2. Week 2 uses 4: error 4 - 2 = 2, size
    // stays 4, chance 0.5 + 0.2 x 0.5 = 0.6: says 2.4. Week 3 nothing: error -2.4, chance 0.48: says 1.92.
    // Week 4 uses 8: error 6.08, size 6, chance 0.48 + 0.2 x 0.52 = 0.584: says 3.504.
    const { errors, forecast, parameters } = teunterSyntetosBabai.fixed(series([0, 4, 0, 8]), CONSTANTS);
    expect(parameters).toEqual({ ...CONSTANTS, start: 0.5, size: 4 });
    for (const [index, wanted] of [2, -2.4, 6.08].entries()) expect(errors[index]).toBeCloseTo(wanted, 12);
    expect(errors.length).toBe(3);
    for (const value of forecast(2)) expect(value).toBeCloseTo(3.504, 12);
  });

  it("starts from the chance and the size that it is given", () => {
    // One value, never updated: 10 x 0.25.
    const given = { ...CONSTANTS, start: 0.25, size: 10 };
    expect(teunterSyntetosBabai.fixed(series([4]), given).forecast(1)).toEqual([2.5]);
  });

  it("is 0 where nothing was used", () => {
    expect(teunterSyntetosBabai.fixed(series(zeros(9)), CONSTANTS).forecast(2)).toEqual([0, 0]);
    expect(teunterSyntetosBabai.fitted(series(zeros(9))).forecast(2)).toEqual([0, 0]);
  });

  it("fades for an item that is no longer used, by a share with every week", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 2, maxLength: 12 }), (used) => {
        const given = { ...CONSTANTS, start: 1 };
        const rateAfter = (weeks: number) =>
          teunterSyntetosBabai.fixed(series([...used, ...zeros(weeks)]), given).forecast(1)[0] ?? Number.NaN;
        // A week without a use leaves 0.8 of the chance: ten weeks 0.8^10 = 0.1074.
        expect(rateAfter(10) / rateAfter(0)).toBeCloseTo(0.8 ** 10, 9);
      }),
    );
  });
});
