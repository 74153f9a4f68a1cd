import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { recipeEvidence, singleStepFactor } from "#lib/packing/learning/recipe-evidence";
import { addDays } from "#lib/units/day";
import { FIRST_DAY, shelf, trueShelf, type Uses } from "./shelf";

const today = addDays(FIRST_DAY, 70);
const times = [6, 2, 9, 1, 7, 3, 8, 4, 5, 6];
const fills: readonly Uses[] = times.map((many) => ({ "mug/fill": { times: many, units: 11 } }));
const pairs: readonly Uses[] = times.map((many) => ({
  "mug/wrap": { times: many, units: 2 },
  "mug/fill": { times: many, units: 9 },
}));

const cards = {
  holding: new Set(["mug/wrap", "mug/fill", "vase/fill", "mug/fill/2"]),
  noes: new Map<string, number>(),
};

describe("recipe evidence", () => {
  it("learns that 13 sheets go where the card says 11", () => {
    const { total, steps, counts } = recipeEvidence(trueShelf(fills, { "mug/fill": 13 / 11 }), today, cards);
    expect(total?.factor).toBeCloseTo(13 / 11, 1);
    expect(total?.low).toBeLessThan(13 / 11);
    expect(total?.high).toBeGreaterThan(13 / 11);
    expect(steps[0]).toMatchObject({ stepKeys: ["mug/fill"], counts: 10, told: true, mixedUpWith: [] });
    expect(counts).toBe(10);
  });

  it("has nothing to say without uses", () => {
    expect(recipeEvidence([], today, cards)).toEqual({ total: null, steps: [], recipes: [], counts: 0 });
  });

  it("is unsure after one count and surer after each", () => {
    const all = trueShelf(fills, { "mug/fill": 1.1 });
    const widths = [1, 3, 10].map((counts) => {
      const step = recipeEvidence(all.slice(0, counts), today, cards).steps[0];
      return (step?.high ?? 0) - (step?.low ?? 0);
    });
    expect(widths).toEqual([...widths].sort((a, b) => b - a));
    expect(recipeEvidence(all.slice(0, 1), today, cards).steps[0]?.told).toBe(false);
  });

  it("takes steps that always go together as one, and is less sure of each", () => {
    const evidence = recipeEvidence(trueShelf(pairs, { "mug/wrap": 1.2, "mug/fill": 1.2 }), today, cards);
    const [bundle] = evidence.steps;
    if (bundle === undefined) throw new RangeError("the shelf has a bundle");
    expect(bundle.stepKeys).toEqual(["mug/wrap", "mug/fill"]);
    const [wrap, fill] = bundle.stepKeys.map((key) => singleStepFactor(bundle, key));
    expect(wrap?.deviation).toBeGreaterThan(fill?.deviation ?? Number.NaN);
    expect(fill?.deviation).toBeGreaterThan(bundle.deviation);
    expect(() => singleStepFactor(bundle, "vase/fill")).toThrow(RangeError);
  });

  it("names the steps with which a step is mixed up", () => {
    // Weeks of many mugs are weeks of many vases, but not quite.
    const weeks = times.map((many, at) => ({
      "mug/fill": { times: many, units: 11 },
      "vase/fill": { times: many + ([0, 2, -1, 1, -2, 2, 0, -1, 1, -2][at] ?? 0), units: 11 },
    }));
    const { steps } = recipeEvidence(trueShelf(weeks, { "mug/fill": 1.2, "vase/fill": 0.9 }), today, cards);
    expect(steps.map(({ mixedUpWith }) => mixedUpWith)).toEqual([["vase/fill"], ["mug/fill"]]);
  });

  it("knows what a recipe takes better than which of its steps takes it", () => {
    // Wraps go by the piece, fill by the parcel: they go together, but not quite.
    const weeks = times.map((many, at) => ({
      "mug/wrap": { times: many + ([1, 0, 2, 1, 0, 0, 2, 1, 1, 0][at] ?? 0), units: 5 },
      "mug/fill": { times: many, units: 6 },
    }));
    const intervals = trueShelf(weeks, { "mug/wrap": 1.2, "mug/fill": 1.2 });
    const { steps, recipes } = recipeEvidence(intervals, today, cards);
    expect(recipes.map(({ stepKeys }) => stepKeys)).toEqual([["mug/wrap", "mug/fill"]]);
    expect(recipes[0]?.shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(recipes[0]?.factor).toBeCloseTo(1.2, 1);
    for (const step of steps) expect(step.deviation).toBeGreaterThan(recipes[0]?.deviation ?? Number.NaN);
  });

  it("starts anew with a new version of a card, which is another step", () => {
    const weeks = times.map((many, at) => ({
      [at < 8 ? "mug/fill/1" : "mug/fill/2"]: { times: many, units: at < 8 ? 11 : 13 },
    }));
    const { steps } = recipeEvidence(trueShelf(weeks, { "mug/fill/1": 13 / 11 }), today, cards);
    const [old, fresh] = steps;
    expect(old?.factor).toBeGreaterThan(1.12);
    expect(fresh?.counts).toBe(2);
    expect(fresh?.deviation).toBeGreaterThan(old?.deviation ?? Number.NaN);
    expect(Math.abs((fresh?.factor ?? 0) - 1)).toBeLessThan(0.03);
  });

  it("is not led astray by one misread count", () => {
    const right = trueShelf(fills, {});
    const opening = (right[0]?.opening.counted ?? 0) / 12000;
    const counted = [opening, ...right.map(({ closing }) => closing.counted / 12000)];
    for (const at of [2, 5, 8]) {
      const misread = shelf(counted.with(at, 0.6 * (counted[at] ?? 0)), fills);
      const { total } = recipeEvidence(misread, today, cards);
      expect(Math.abs((total?.factor ?? 0) - 1)).toBeLessThan(0.05);
    }
  });

  it("gives a total between the least and the most of its steps' factors", () => {
    const factor = fc.double({ min: 0.7, max: 1.6, noNaN: true });
    fc.assert(
      fc.property(factor, factor, (mug, vase) => {
        const weeks = times.map((many, at) => ({
          "mug/fill": { times: many, units: 11 },
          "vase/fill": { times: times[(at * 3) % 10] ?? 0, units: 8 },
        }));
        const { total, steps } = recipeEvidence(
          trueShelf(weeks, { "mug/fill": mug, "vase/fill": vase }),
          today,
          cards,
        );
        const factors = steps.map((step) => step.factor);
        expect(total?.factor).toBeGreaterThanOrEqual(Math.min(...factors) - 1e-9);
        expect(total?.factor).toBeLessThanOrEqual(Math.max(...factors) + 1e-9);
      }),
      { numRuns: 25 },
    );
  });
});
