import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { flatWrap } from "#lib/packing/wrap/flat-wrap";
import { inches } from "../bench-shop";

// Computed from the formula; the sizes are common practice.
describe("flatWrap", () => {
  it("is 51 in twice round a plate 10.5 in across and 1 in thick", () => {
    const plate = { acrossUm: inches(10.5), thickUm: inches(1), alongUm: inches(10.5) };
    const wrap = { layers: 2, thickUm: 4762.5, overlapUm: inches(2), endMarginUm: inches(1) };
    const need = flatWrap(plate, wrap);
    expect(need.lengthUm).toBe(inches(51));
    expect([need.widthUm, need.wishedWidthUm]).toEqual([inches(11.5), inches(12.5)]);
  });

  it("is the sum of rectangles through the middle of each layer", () => {
    const sizes = fc.integer({ min: 5_000, max: 500_000 });
    fc.assert(
      fc.property(
        sizes,
        sizes,
        fc.nat(15_000),
        fc.integer({ min: 1, max: 12 }),
        (acrossUm, thick, t, layers) => {
          const rounds = Array.from(
            { length: layers },
            (_, k) => 2 * (acrossUm + thick + 2 * (2 * k + 1) * t),
          );
          const wrap = { layers, thickUm: t, overlapUm: 0, endMarginUm: 0 };
          const need = flatWrap({ acrossUm, thickUm: thick, alongUm: 1 }, wrap);
          expect(need.lengthUm).toBe(rounds.reduce((total, each) => total + each, 0));
        },
      ),
    );
  });
});
