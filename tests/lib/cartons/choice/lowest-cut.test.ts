import { describe, expect, it } from "vitest";
import { cutCarton } from "#lib/cartons/choice/cut-carton";
import { type HeightRequest, leastCutValue, lowestCut } from "#lib/cartons/choice/lowest-cut";
import { cartonCost } from "#lib/cartons/cost/carton-cost";
import { placementFaults } from "#lib/cartons/fit/placement-faults";
import { CAUGHT_OUT, NO_SEARCH } from "./caught-out";
import { CENT, carton, IN, MUG, MUG_TERMS, mugRequest } from "./mug-bench";

const cube10 = carton("cube-10", [10, 10, 10], 100);
const request: HeightRequest = mugRequest([cube10], { minuteValue: 2 * CENT });
const NO_LIMIT = Number.POSITIVE_INFINITY;

describe("the lowest height that a carton can be cut to", () => {
  it("is a whole step above piece and clearance: 171.45 mm, so 175", () => {
    expect(lowestCut(cube10, request, NO_LIMIT)).toMatchObject({ heightUm: 175_000, least: "exact" });
    const fine = { ...request, cut: { minutes: 5, stepUm: 50 } };
    expect(lowestCut(cube10, fine, NO_LIMIT)?.heightUm).toBe(171_450);
  });

  it("is none where no height costs less than what it must be under", () => {
    const least = leastCutValue(cube10, request) ?? 0;
    expect(lowestCut(cube10, request, least)).toBeNull();
    expect(lowestCut(cube10, request, least + 1)?.heightUm).toBe(175_000);
  });

  it("is never above what is of use, even where the search has bad luck further down", () => {
    for (const { smaller, pieces } of CAUGHT_OUT) {
      const tall = { ...carton("tall", [1, 1, 1], 0), inside: { ...smaller, heightUm: 20 * IN } };
      const load = { pieces, ml: 100, massMg: 1 };
      const none = { wallsUm: 0, baseUm: 0, topUm: 0 };
      const cut = { minutes: 5, stepUm: IN };
      const asked = { ...request, load, clearance: none, cut, effort: NO_SEARCH };
      const above = cartonCost(load, cutCarton(tall, smaller.heightUm + IN), MUG_TERMS).totalValue;
      const lowest = lowestCut(tall, asked, above + 5 * 2 * CENT);
      expect(lowest?.heightUm).toBeLessThanOrEqual(smaller.heightUm);
      const inside = { ...smaller, heightUm: lowest?.heightUm ?? 0 };
      expect(placementFaults({ pieces, inside, clearance: none }, lowest?.placement ?? [])).toEqual([]);
    }
  });

  it("is none where the carton is no higher than needed, or its walls leave no room", () => {
    expect(lowestCut(carton("low", [10, 10, 6.75], 100), request, NO_LIMIT)).toBeNull();
    expect(lowestCut(carton("slim", [2, 10, 20], 100), request, NO_LIMIT)).toBeNull();
    expect(lowestCut(carton("narrow", [7, 10, 20], 100), request, NO_LIMIT)).toBeNull();
  });
});

describe("the least that a load can cost in a carton cut down", () => {
  it("is its cost at the height of the highest piece where that bites, minutes and all", () => {
    const cost = cartonCost(MUG, cutCarton(cube10, 175_000), MUG_TERMS).totalValue + 5 * 2 * CENT;
    expect(leastCutValue(cube10, request)).toBeCloseTo(cost, 3);
  });

  it("goes by the volume where that needs more: four mugs over a base of 8 in", () => {
    const four = { ...MUG, pieces: Array.from({ length: 4 }, () => MUG.pieces).flat(), ml: MUG.ml * 4 };
    const tall = carton("tall", [8, 8, 40], 100);
    // 4 x 143.6875 cu in over 6 x 6 in are 15.97 in, and 2 in of clearance: 456.4 mm, so 460.
    const cost = cartonCost(four, cutCarton(tall, 460_000), MUG_TERMS).totalValue + 5 * 2 * CENT;
    expect(leastCutValue(tall, { ...request, load: four })).toBeCloseTo(cost, 3);
  });
});
