import { describe, expect, it } from "vitest";
import { classicHoltWintersAdditiveRecipe } from "#lib/forecast/methods/classic-holt-winters";
import { holtWintersAdditiveRecipe } from "#lib/forecast/methods/holt-winters";
import { ruleOf, UNUSED_CONSTANTS } from "#lib/forecast/methods/smoothing-recipe";

describe("rule of a recipe", () => {
  it("renews the season from the old level unless the recipe says otherwise", () => {
    expect(ruleOf(holtWintersAdditiveRecipe, UNUSED_CONSTANTS)).toEqual({
      constants: UNUSED_CONSTANTS,
      season: "additive",
      seasonFrom: "old-level",
    });
    expect(ruleOf(classicHoltWintersAdditiveRecipe, UNUSED_CONSTANTS).seasonFrom).toBe("new-level");
  });
});
