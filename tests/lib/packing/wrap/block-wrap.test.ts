import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { blockWrap } from "#lib/packing/wrap/block-wrap";
import { flatWrap } from "#lib/packing/wrap/flat-wrap";
import { roundWrap } from "#lib/packing/wrap/round-wrap";

const wrap = { layers: 2, thickUm: 5000, overlapUm: 50_000, endMarginUm: 25_000 };

describe("blockWrap", () => {
  it("winds round pieces by their widest side", () => {
    const block = { lengthUm: 120_000, widthUm: 90_000, heightUm: 100_000 };
    const wound = roundWrap({ acrossUm: 120_000, heightUm: 100_000 }, wrap);
    expect(blockWrap("cylinder", block, wrap)).toEqual(wound);
    expect(blockWrap("stemmed", block, wrap)).toEqual(wound);
  });

  it("winds boxes and flat pieces round their two shorter sides, however they stand", () => {
    const wound = flatWrap({ acrossUm: 90_000, thickUm: 20_000, alongUm: 120_000 }, wrap);
    const lying = { lengthUm: 120_000, widthUm: 90_000, heightUm: 20_000 };
    const standing = { lengthUm: 20_000, widthUm: 120_000, heightUm: 90_000 };
    expect(blockWrap("box", lying, wrap)).toEqual(wound);
    expect(blockWrap("flat", standing, wrap)).toEqual(wound);
  });

  it("never takes less with a layer more", () => {
    const side = fc.integer({ min: 10_000, max: 400_000 });
    const shapes = fc.constantFrom("cylinder", "box", "flat", "stemmed");
    fc.assert(
      fc.property(shapes, side, side, side, fc.integer({ min: 1, max: 8 }), (shape, l, w, h, layers) => {
        const block = { lengthUm: l, widthUm: w, heightUm: h };
        const few = blockWrap(shape, block, { ...wrap, layers });
        const more = blockWrap(shape, block, { ...wrap, layers: layers + 1 });
        expect(more.lengthUm > few.lengthUm && more.widthUm >= few.widthUm).toBe(true);
      }),
    );
  });
});
