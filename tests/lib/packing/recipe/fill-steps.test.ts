import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { blockVolume } from "#lib/packing/block";
import { USUAL_HABITS } from "#lib/packing/habits";
import { fillSteps } from "#lib/packing/recipe/fill-steps";
import { amountOfUnits, sumAmounts, unitsOf } from "#lib/units/amount";
import { card, inches, largeBubble, looseFill, paper } from "../bench-shop";

const cube = (side: number) => ({ lengthUm: inches(side), widthUm: inches(side), heightUm: inches(side) });
const eight = { block: cube(8), ml: blockVolume(cube(8)), baseUm: inches(2), name: "the piece" };
const total = (...asked: Parameters<typeof fillSteps>) =>
  unitsOf(sumAmounts(fillSteps(...asked).map((s) => s.amount)));

describe("fillSteps", () => {
  // Computed: 1216 cu in at 52 to a sheet are 23.4, taken 23½.
  it("fills round an 8 in cube in a 12 in cube with 23½ sheets, in three places", () => {
    const steps = fillSteps(cube(12), eight, paper, USUAL_HABITS, "imperial");
    expect(steps.map(({ words, used }) => [words, used])).toEqual([
      ["Lay a base of paper under the piece", "5½ sheets"],
      ["Fill round the piece with paper", "12½ sheets"],
      ["Fill the top with paper, close, shake, and add where it moves", "5½ sheets"],
    ]);
    expect(steps[0]?.reason).toBe(
      "288 cu in of 1216 cu in, at 52 cu in each: 5.5 sheets of 23 sheets in all, taken: 23½ sheets.",
    );
    expect(new Set(steps.map(({ per }) => per))).toEqual(new Set(["parcel"]));
  });

  it("pours loose fill without rounding it to a bag", () => {
    const poured = total(cube(12), eight, looseFill, USUAL_HABITS, "imperial");
    const theory = (1216 * 16.387064 * 1.1) / 396_436;
    expect(poured).toBeGreaterThanOrEqual(theory);
    expect(poured).toBeLessThan(theory + 0.001);
  });

  it("is nothing where nothing is void", () => {
    expect(fillSteps(cube(8), eight, paper, USUAL_HABITS, "imperial")).toEqual([]);
  });

  it("never takes less in a larger carton, nor less than the theory", () => {
    const more = fc.nat(200_000);
    fc.assert(
      fc.property(
        more,
        more,
        more,
        more,
        fc.constantFrom(paper, largeBubble, looseFill),
        (l, w, h, extra, supply) => {
          const inside = { lengthUm: inches(8) + l, widthUm: inches(8) + w, heightUm: inches(8) + h };
          const larger = { ...inside, heightUm: inside.heightUm + extra };
          const small = total(inside, eight, supply, USUAL_HABITS, "metric");
          expect(total(larger, eight, supply, USUAL_HABITS, "metric")).toBeGreaterThanOrEqual(small);
          if (supply !== paper) return;
          const theory = (blockVolume(inside) - eight.ml) / 16.387064 / 52;
          expect(small).toBeGreaterThanOrEqual(theory - 1e-3);
          expect(small).toBeLessThan(theory + unitsOf(amountOfUnits(0.5)) + 1e-3);
        },
      ),
    );
  });

  it("refuses what fills nothing", () => {
    expect(() => fillSteps(cube(12), eight, card, USUAL_HABITS, "imperial")).toThrow(RangeError);
  });
});
