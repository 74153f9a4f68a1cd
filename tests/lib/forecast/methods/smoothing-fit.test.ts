import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dampedTrendRecipe, holtRecipe } from "#lib/forecast/methods/holt";
import { holtWintersAdditiveRecipe } from "#lib/forecast/methods/holt-winters";
import { simpleSmoothingRecipe } from "#lib/forecast/methods/simple-smoothing";
import { smooth } from "#lib/forecast/methods/smoothing";
import { type SmoothingFit, smoothingFit } from "#lib/forecast/methods/smoothing-fit";
import { ruleOf, type SmoothingRecipe, UNUSED_CONSTANTS } from "#lib/forecast/methods/smoothing-recipe";

const RECIPES = [simpleSmoothingRecipe, holtRecipe, dampedTrendRecipe, holtWintersAdditiveRecipe];
const uses = fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 8, maxLength: 20 });

function squares(
  recipe: SmoothingRecipe,
  values: readonly number[],
  { constants, start }: SmoothingFit,
): number {
  const { errors } = smooth(values, ruleOf(recipe, constants), start);
  return errors.reduce((sum, error) => sum + error * error, 0);
}

describe.each(RECIPES.map((recipe) => [recipe.name, recipe] as const))("fit of %s", (_, recipe) => {
  it("is no worse than any point of its grid, and better still with a start of its own", () => {
    fc.assert(
      fc.property(uses, (values) => {
        const series = { values, seasonLength: 4 };
        const kept = squares(recipe, values, smoothingFit(recipe, series, "constants"));
        const free = squares(recipe, values, smoothingFit(recipe, series, "constants-and-start"));
        expect(free).toBeLessThanOrEqual(kept * 1.000001 + 1e-9);
        for (const place of [0, 1]) {
          const point = recipe.constants.map(({ name, starts }) => [name, starts[place] ?? 0]);
          const constants = { ...UNUSED_CONSTANTS, ...Object.fromEntries(point) };
          const other = squares(recipe, values, { constants, start: recipe.start(series) });
          expect(kept).toBeLessThanOrEqual(other + 1e-9);
        }
      }),
      { numRuns: 12 },
    );
  });

  it("keeps each constant within its bounds", () => {
    fc.assert(
      fc.property(uses, (values) => {
        const { constants } = smoothingFit(recipe, { values, seasonLength: 4 }, "constants-and-start");
        for (const { name, bounds } of recipe.constants) {
          expect(constants[name]).toBeGreaterThanOrEqual(bounds[0]);
          expect(constants[name]).toBeLessThanOrEqual(bounds[1]);
        }
      }),
      { numRuns: 12 },
    );
  });
});

describe("fit of simple smoothing without a start of its own", () => {
  it("finds the constant by hand", () => {
    // 0, 1, 1: errors 0, 1, 1 - alpha: least at alpha 1, with 1 as the sum of squares.
    const series = { values: [0, 1, 1], seasonLength: 1 };
    const fit = smoothingFit(simpleSmoothingRecipe, series, "constants");
    expect(fit.constants.alpha).toBeCloseTo(1, 6);
    expect(squares(simpleSmoothingRecipe, series.values, fit)).toBeCloseTo(1, 9);
  });
});
