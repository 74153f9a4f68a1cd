import { describe, expect, it } from "vitest";
import { dividers } from "#lib/packing/set/dividers";

const cells = { lengthUm: 300, widthUm: 200, heightUm: 100 };

// Computed from the sizes.
describe("dividers", () => {
  it("are a strip along the length and two along the width for two rows of three", () => {
    expect(dividers(cells, { rows: 2, columns: 3, tiers: 1 })).toEqual({
      strips: 3,
      pads: 0,
      area: 300 * 100 + 2 * 200 * 100,
    });
  });

  it("are a pad and half as high strips for each of two tiers", () => {
    expect(dividers(cells, { rows: 1, columns: 2, tiers: 2 })).toEqual({
      strips: 2,
      pads: 1,
      area: 2 * 200 * 50 + 300 * 200,
    });
  });

  it("are a strip along the length in each of two tiers", () => {
    expect(dividers(cells, { rows: 2, columns: 1, tiers: 2 })).toEqual({
      strips: 2,
      pads: 1,
      area: 2 * 300 * 50 + 300 * 200,
    });
  });

  it("are none for one piece", () => {
    expect(dividers(cells, { rows: 1, columns: 1, tiers: 1 })).toEqual({ strips: 0, pads: 0, area: 0 });
  });
});
