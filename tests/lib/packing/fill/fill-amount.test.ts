import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fillAmount } from "#lib/packing/fill/fill-amount";
import { USUAL_HABITS } from "#lib/packing/habits";
import { unitsOf } from "#lib/units/amount";
import { card, inches, largeBubble, looseFill, paper } from "../bench-shop";

const CUBIC_INCH = 16.387064;
const units = (...[ml, supply, habits, manner]: Parameters<typeof fillAmount>) => {
  const fill = fillAmount(ml, supply, habits, manner);
  return fill.kind === "fill" ? unitsOf(fill.theory) : Number.NaN;
};

// Computed from the formula; 52 and 86 cu in a sheet and 65 a square foot are from memory.
describe("fillAmount", () => {
  const round = 1216 * CUBIC_INCH;

  it("is 23.4 sheets firm, 14.1 loose, or 19 square feet of large bubble for 1216 cubic inches", () => {
    expect(units(round, paper, USUAL_HABITS, "firm")).toBeCloseTo(23.4, 1);
    expect(units(round, paper, USUAL_HABITS, "loose")).toBeCloseTo(14.1, 1);
    expect(Math.round(units(round, largeBubble, USUAL_HABITS, "firm"))).toBe(19);
  });

  it("goes by the area of a sheet", () => {
    const half = {
      ...paper,
      form: { kind: "sheet", lengthUm: inches(24), widthUm: inches(18), thickUm: 76 },
    } as const;
    expect(units(round, half, USUAL_HABITS, "firm")).toBeCloseTo(
      2 * units(round, paper, USUAL_HABITS, "firm"),
      3,
    );
  });

  it("pours a little over of loose fill", () => {
    expect(units(396_436, looseFill, USUAL_HABITS, "firm")).toBeCloseTo(1.1, 3);
  });

  it("fills nothing with card, or with a roll by the strip", () => {
    expect(fillAmount(1000, card, USUAL_HABITS, "firm").kind).toBe("no-fill");
    expect(fillAmount(1000, { ...largeBubble, useUnit: "strip" }, USUAL_HABITS, "firm").kind).toBe("no-fill");
  });

  it("never takes less for a larger void", () => {
    const ml = fc.double({ min: 0, max: 500_000, noNaN: true });
    fc.assert(
      fc.property(ml, ml, fc.constantFrom(paper, largeBubble, looseFill), (one, other, supply) => {
        const small = units(Math.min(one, other), supply, USUAL_HABITS, "firm");
        expect(units(Math.max(one, other), supply, USUAL_HABITS, "firm")).toBeGreaterThanOrEqual(small);
      }),
    );
  });
});
