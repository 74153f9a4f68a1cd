import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wrapAmount } from "#lib/packing/recipe/wrap-amount";
import { unitArea } from "#lib/packing/unit-area";
import { unitsOf } from "#lib/units/amount";
import { inches, largeBubble, looseFill, paper, smallBubble } from "../bench-shop";

const need = (length: number, width: number) => ({
  lengthUm: inches(length),
  widthUm: inches(width),
  wishedWidthUm: inches(width),
  overlapUm: inches(2),
});
const units = (...asked: Parameters<typeof wrapAmount>) => unitsOf(wrapAmount(...asked).amount);

describe("wrapAmount", () => {
  it("counts torn pieces, or the length of roll that they are", () => {
    expect(units(smallBubble, need(32.6, 8.5), "whole")).toBe(3);
    expect(units({ ...smallBubble, useUnit: "foot" }, need(32.6, 8.5), "whole")).toBe(3);
    expect(wrapAmount(smallBubble, need(32.6, 8.5), "whole").usedUm).toBe(inches(36));
  });

  it("counts square feet of the whole width of a roll", () => {
    expect(units(largeBubble, need(24, 10), "whole")).toBe(4);
  });

  it("halves torn pieces for guards only", () => {
    expect(units(smallBubble, need(5, 3), "halves")).toBe(0.5);
    expect(units(smallBubble, need(5, 3), "whole")).toBe(1);
  });

  it("counts part sheets", () => {
    expect(units(paper, need(23, 17), "whole")).toBe(0.5);
    expect(units({ ...paper, useUnit: "square-foot" }, need(23, 17), "whole")).toBe(3);
  });

  it("is never less than the strip in theory", () => {
    const side = fc.integer({ min: 1000, max: 1_500_000 });
    const supplies = fc.constantFrom(smallBubble, largeBubble, paper, {
      ...largeBubble,
      useUnit: "metre",
    } as const);
    fc.assert(
      fc.property(
        side,
        side,
        supplies,
        fc.constantFrom("whole", "halves"),
        (lengthUm, widthUm, supply, torn) => {
          const strip = { lengthUm, widthUm, wishedWidthUm: widthUm, overlapUm: 0 };
          const covered = units(supply, strip, torn) * (unitArea(supply) ?? 0);
          expect(covered).toBeGreaterThanOrEqual(lengthUm * widthUm * (1 - 1e-9));
        },
      ),
    );
  });

  it("refuses what is no wrap", () => {
    expect(() => wrapAmount(looseFill, need(1, 1), "whole")).toThrow(RangeError);
  });
});
