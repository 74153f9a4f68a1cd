import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitBook } from "#lib/cartons/choice/fit-book";
import { cartonFit } from "#lib/cartons/fit/carton-fit";
import { USUAL_EFFORT } from "#lib/cartons/fit/fit-effort";
import { placementFaults } from "#lib/cartons/fit/placement-faults";
import { CAUGHT_OUT, NO_SEARCH } from "./caught-out";
import { inches } from "./mug-bench";

const none = { wallsUm: 0, baseUm: 0, topUm: 0 };

describe("the fits of one load, remembered", () => {
  it("are those of each carton asked by itself, whatever was asked before", () => {
    const side = (from: number, to: number) => fc.integer({ min: from, max: to });
    const sides = (from: number, to: number) => fc.tuple(side(from, to), side(from, to), side(from, to));
    const kinds = new Set<string>();
    fc.assert(
      fc.property(
        fc.array(sides(1, 4), { minLength: 1, maxLength: 4 }),
        fc.array(sides(3, 7), { minLength: 2, maxLength: 6 }),
        (blocks, cartons) => {
          const pieces = blocks.map((block) => ({ block: inches(...block), upright: false }));
          const fitIn = fitBook({ pieces, clearance: none, effort: USUAL_EFFORT });
          for (const inside of cartons.map((carton) => inches(...carton))) {
            const question = { pieces, inside, clearance: none };
            const fit = fitIn(inside);
            kinds.add(fit.kind);
            expect(fit.kind).toBe(cartonFit(question, USUAL_EFFORT).kind);
            if (fit.kind === "fits") expect(placementFaults(question, fit.placement)).toEqual([]);
          }
        },
      ),
      { numRuns: 200, seed: 5 },
    );
    expect([...kinds].toSorted()).toEqual(["does-not-fit", "fits"]);
  });

  it("turn what was not proven into a fit once a placement that holds in it is found", () => {
    const carried = CAUGHT_OUT.filter(({ pieces, smaller, larger }) => {
      const fitIn = fitBook({ pieces, clearance: none, effort: NO_SEARCH });
      const before = fitIn(larger).kind;
      expect(fitIn(smaller).kind).toBe("fits");
      expect(fitIn(larger).kind).toBe("fits");
      return before === "not-proven";
    });
    expect(carried).not.toEqual([]);
  });
});
