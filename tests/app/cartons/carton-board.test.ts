import { describe, expect, it } from "vitest";
import { ratingOf, sizedCarton } from "#app/cartons/carton-board.ts";
import { IN, inches } from "../../lib/cartons/choice/mug-bench";
import { cartonSupply } from "./small-shelf";

const BOARD_POUNDS = 0.115;
const cube = (change: Parameters<typeof cartonSupply>[2] = {}) => {
  const sized = sizedCarton(cartonSupply("cube-12", [12, 12, 12], change), 0, BOARD_POUNDS);
  if (sized === null) throw new RangeError("the cube has its sizes");
  return sized;
};

describe("a carton with what follows from its board", () => {
  it("is as large outside as its board makes it: two walls across, four flaps up", () => {
    // C flute is 4 mm on a carton seller's guide; tests/reference/carton-board.test.ts has its address.
    const { outside, isOutsideMeasured, boardUm } = cube();
    expect(boardUm).toBe(4_000);
    expect(outside).toEqual({ lengthUm: 312_800, widthUm: 312_800, heightUm: 320_800 });
    expect(isOutsideMeasured).toBe(false);
  });

  it("bows out on both sides of every size where the shop measured that", () => {
    const sized = sizedCarton(cartonSupply("cube-12", [12, 12, 12]), 5_000, BOARD_POUNDS);
    expect(sized?.outside).toEqual({ lengthUm: 322_800, widthUm: 322_800, heightUm: 330_800 });
  });

  it("is as large as it was measured, and does not bow out once more", () => {
    const measured = {
      outsideLengthUm: 13 * IN,
      outsideWidthUm: 12.75 * IN,
      outsideHeightUm: 13 * IN,
    };
    const sized = sizedCarton(cartonSupply("cube-12", [12, 12, 12], measured), 5_000, BOARD_POUNDS);
    expect(sized).toMatchObject({ outside: inches(13, 12.75, 13), isOutsideMeasured: true });
  });

  it.each([
    [{ flutes: "B" }, 3_000],
    [{ wall: "double", flutes: "BC" }, 7_000],
    [{ flutes: null }, 4_000],
    [{ wall: "double", flutes: null }, 7_000],
    [{ wall: null, flutes: null }, 4_000],
  ])("has the board of %j, the usual one of its wall where none is written down", (change, boardUm) => {
    expect(cube(change).boardUm).toBe(boardUm);
  });

  it("weighs what it was weighed at, else a guess by its blank", () => {
    expect(cube({ massMg: 400_000 })).toMatchObject({ massMg: 400_000, isMassGuess: false });
    // 2 × (12 + 12) + 2 in of joint by 12 + 12 in are 8 1/3 sq ft, at 0.115 lb: 434.7 g
    const guessed = cube();
    expect(guessed.isMassGuess).toBe(true);
    expect(guessed.massMg / 1000).toBeCloseTo(434.7, 1);
  });

  it("is none while its inside sizes are not known", () => {
    expect(sizedCarton(cartonSupply("flat", [1, 1, 1], { heightUm: null }), 0, BOARD_POUNDS)).toBeNull();
  });

  it("is taken for the usual rating where nobody wrote it down or it can't be read, and says so", () => {
    for (const rating of [null, " ", "strong"]) {
      expect(cube({ rating })).toMatchObject({
        rating: { kind: "edgeCrush", wall: "single", poundsPerInch: 32 },
        isRatingKnown: false,
      });
    }
    expect(cube({ rating: null, wall: "double" }).rating).toMatchObject({
      wall: "double",
      poundsPerInch: 48,
    });
    expect(cube({ rating: "200 psi" })).toMatchObject({
      rating: { kind: "burst", wall: "single", psi: 200 },
      isRatingKnown: true,
    });
  });
});

describe("a rating as a seller writes it", () => {
  it.each(["none", "None.", " no stamp ", "unrated", "not rated"])("has no stamp for “%s”", (text) => {
    expect(ratingOf(text, "single")).toEqual({ kind: "unrated" });
  });

  it("is not known where it is empty, which is not the same as no stamp", () => {
    expect(ratingOf("", "single")).toBeNull();
    expect(ratingOf(null, "single")).toBeNull();
  });
});
