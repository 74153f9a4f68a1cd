import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { doubleBoxChoice } from "#lib/cartons/choice/double-box-choice";
import { cartonFit } from "#lib/cartons/fit/carton-fit";
import { cartonOutside } from "#lib/packing/carton-outside";
import { CENT, carton, IN, MUG_TERMS, mugRequest } from "./mug-bench";

const thin = { boardUm: 0 };
const unrated = { rating: { kind: "unrated" } } as const;
const cube8 = carton("cube-8", [8, 8, 8], 80, { ...thin, ...unrated, ageing: "sits" });
const cube10 = carton("cube-10", [10, 10, 10], 100, thin);
const cube12 = carton("cube-12", [12, 12, 12], 130, thin);
const terms = { ...MUG_TERMS, postage: (massMg: number) => 500 + massMg / 10_000 };
const asked = (gapIn: number, ...candidates: Parameters<typeof mugRequest>[0]) => ({
  ...mugRequest(candidates, { terms }),
  gapUm: gapIn * IN,
});

describe("a double box", () => {
  // Worked by hand, common practice, no source: an 8 in cube in a 12 in cube leaves 1,216 cu in, 23.4 sheets and 636 g; with
  // 435 g of board and 99 in of tape the outer carton adds about 1,080 g. In a 10 in cube it is 488 cu in and about 560 g.
  it("adds about 1,080 g with 2 in between an 8 in and a 12 in cube", () => {
    const choice = doubleBoxChoice(asked(2, cube8, cube10, cube12));
    expect([choice?.inner.carton.id, choice?.outer.carton.id]).toEqual(["cube-8", "cube-12"]);
    const added = (choice?.outer.cost.massMg ?? 0) - (choice?.inner.cost.massMg ?? 0);
    expect(Math.abs(added / 1_000 - 1_080)).toBeLessThan(5);
    expect(choice?.outer.cost.fillUnits).toBeCloseTo(23.385, 3);
  });

  it("adds about 560 g with 1 in in a 10 in cube, and costs both cartons, fills, tapings and the postage", () => {
    const choice = doubleBoxChoice(asked(1, cube12, cube10, cube8));
    expect(choice?.outer.carton.id).toBe("cube-10");
    const { inner, outer } = choice ?? {};
    expect(Math.abs(((outer?.cost.massMg ?? 0) - (inner?.cost.massMg ?? 0)) / 1_000 - 560)).toBeLessThan(5);
    const parts = [80, 50.08, 5.68, 100, (488 / 52) * 7, 6.59, 500 + (outer?.cost.massMg ?? 0) / 10_000];
    const cents = parts.reduce((sum, part) => sum + part, 0);
    expect((choice?.totalValue ?? 0) / CENT).toBeCloseTo(cents, 1);
    expect((choice?.totalValue ?? 0) - (choice?.asSpentValue ?? 0)).toBe(80 * CENT);
  });

  it("has an inner carton that may be unrated, and an outer one that may not", () => {
    expect(doubleBoxChoice(asked(1, cube8, { ...cube10, ...unrated }))).toBeNull();
  });

  it("counts the board of the inner carton: 4 mm leave no inch in a 10 in cube", () => {
    expect(doubleBoxChoice(asked(1, { ...cube8, boardUm: 4_000 }, cube10))).toBeNull();
  });

  it("is none where one of the two is not there, or the load fits no inner carton", () => {
    expect(doubleBoxChoice(asked(1, { ...cube8, onHand: 0 }, cube10))).toBeNull();
    expect(doubleBoxChoice(asked(1, carton("cube-6", [6, 6, 6], 50), cube10))).toBeNull();
  });

  it("is never of a carton in itself, though it would go in where board and gap are nothing", () => {
    expect(doubleBoxChoice(asked(0, cube10))).toBeNull();
  });

  it("refuses a gap below zero", () => {
    expect(() => doubleBoxChoice(asked(-1, cube8, cube10))).toThrow(RangeError);
  });

  it("keeps the load in the inner carton and the gap all round it, whatever the cartons", () => {
    let pairs = 0;
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 6, max: 18 }), { minLength: 2, maxLength: 8 }), (sides) => {
        const request = asked(
          1,
          ...sides.map((side, at) => carton(`c${at}`, [side, side + (at % 3), side], 10 * side)),
        );
        const choice = doubleBoxChoice(request);
        if (choice === null) return;
        pairs++;
        const { inner, outer } = choice;
        const { pieces } = request.load;
        const { clearance, effort, gapUm } = request;
        expect(cartonFit({ pieces, clearance, inside: inner.carton.inside }, effort).kind).toBe("fits");
        const block = cartonOutside(inner.carton.inside, inner.carton.boardUm);
        const gap = { wallsUm: gapUm, baseUm: gapUm, topUm: gapUm };
        const inOuter = {
          pieces: [{ block, upright: true }],
          clearance: gap,
          inside: outer.carton.inside,
        };
        expect(cartonFit(inOuter, effort).kind).toBe("fits");
        expect(outer.cost.massMg).toBeGreaterThan(inner.cost.massMg + outer.carton.massMg);
      }),
      { numRuns: 100, seed: 3 },
    );
    expect(pairs).toBeGreaterThan(30);
  });
});
