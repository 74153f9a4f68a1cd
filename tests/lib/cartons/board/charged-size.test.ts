import { describe, expect, it } from "vitest";
import { chargedSize, packedOutside, USUAL_BULGE_UM } from "#lib/cartons/board/charged-size";

const cube = { lengthUm: 304_800, widthUm: 304_800, heightUm: 304_800 };

describe("packedOutside", () => {
  it("adds board, flaps and the bulge of both walls", () => {
    expect(packedOutside(cube, { boardUm: 4000, bulgeUm: 3000 })).toEqual({
      lengthUm: 318_800,
      widthUm: 318_800,
      heightUm: 326_800,
    });
  });

  it("assumes no bulge until one is measured", () => {
    expect(USUAL_BULGE_UM).toBe(0);
  });

  it.each([
    [
      { ...cube, widthUm: 0 },
      { boardUm: 4000, bulgeUm: 0 },
    ],
    [cube, { boardUm: -1, bulgeUm: 0 }],
    [cube, { boardUm: 4000, bulgeUm: -1 }],
    [cube, { boardUm: Number.NaN, bulgeUm: 0 }],
  ])("refuses %o with %o", (inside, skin) => {
    expect(() => packedOutside(inside, skin)).toThrow(RangeError);
  });
});

describe("chargedSize", () => {
  it("is the outside to the nearest micrometre, as a box", () => {
    expect(chargedSize(cube, { boardUm: 3968.75, bulgeUm: 0 })).toEqual({
      um: [312_738, 312_738, 320_675],
      typed: null,
      shape: "box",
    });
  });
});
