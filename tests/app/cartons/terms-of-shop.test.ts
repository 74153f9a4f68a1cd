import { describe, expect, it } from "vitest";
import { termsOfShop } from "#app/cartons/terms-of-shop.ts";
import { USUAL_HABITS } from "#lib/packing/habits";
import { parcelSize } from "#lib/postage/parcel-size";
import { day } from "#lib/units/day";
import { MICROMETRES_PER_INCH, micrometres } from "#lib/units/length";
import { CENT, CUBIC_INCH_ML } from "../../lib/cartons/choice/mug-bench";
import * as bench from "../../lib/packing/bench-shop";

const FOOT = 12 * MICROMETRES_PER_INCH;
const ground = {
  habits: USUAL_HABITS,
  shelf: { supplies: [bench.tissue, bench.paper, bench.cartonTape], cartons: [], undescribed: [] },
  supplies: {
    masses: new Map<string, number | null>(),
    book: new Map([
      ["paper", 5 * CENT],
      ["carton-tape", 0.9 * CENT],
    ]),
    replacement: new Map<string, number | null>([["paper", 7 * CENT]]),
  },
  postage: { card: null, zones: [] },
  today: day("2026-03-31"),
  bulgeUm: 2_000,
};

describe("what packing costs a shop", () => {
  it("is the fill at today's price and the tape by its length, at book cost where it has no price", () => {
    const shop = termsOfShop("paper", ground);
    if (shop === null) throw new Error("paper fills");
    expect([shop.fillName, shop.tapeName]).toEqual(["paper", "carton-tape"]);
    // 52 cu in to a 24 x 36 in sheet, firm: from memory, as the usual habits say
    expect(shop.terms.fill.mlPerUnit / CUBIC_INCH_ML).toBeCloseTo(52, 6);
    expect(shop.terms.fill).toMatchObject({ massMg: 27_216, value: 7 * CENT });
    expect(shop.terms.tape.valuePerUm * FOOT).toBeCloseTo(0.9 * CENT, 6);
    expect(shop.terms.tape.massMgPerUm * FOOT).toBeCloseTo(701, 6);
    expect(shop.terms.bulgeUm).toBe(2_000);
  });

  it("has no postage without a rate card", () => {
    const size = parcelSize(
      [10, 8, 6].map((side) => micrometres(side * MICROMETRES_PER_INCH)),
      null,
      "box",
    );
    expect(termsOfShop("paper", ground)?.terms.postage(1_000_000, size)).toBeNull();
  });

  it("takes closing for free where no tape is described, and is none where nothing fills", () => {
    const noTape = { ...ground, shelf: { ...ground.shelf, supplies: [bench.paper] } };
    expect(termsOfShop("paper", noTape)).toMatchObject({
      tapeName: null,
      terms: { tape: { valuePerUm: 0, massMgPerUm: 0 } },
    });
    expect(termsOfShop("paper", { ...ground, shelf: { ...ground.shelf, supplies: [] } })).toBeNull();
  });
});
