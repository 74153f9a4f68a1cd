import { describe, expect, it } from "vitest";
import { termsOfShop } from "#app/cartons/terms-of-shop.ts";
import { USUAL_HABITS } from "#lib/packing/habits";
import { parcelSize } from "#lib/postage/parcel-size";
import { micrometres } from "#lib/units/length";
import { PLAIN_SUPPLY } from "#prisma/records/plain-supply";
import type { Supply } from "#prisma/records/supplies";
import { draftShelf } from "../../../app/recipes/[id]/draft/draft-shelf";
import { inches } from "../../lib/cartons/choice/mug-bench";
import { TODAY } from "./small-shelf";

const paper: Supply = {
  ...{ ...PLAIN_SUPPLY, ...inches(36, 24, 1), heightUm: null, massMg: 27_200 },
  ...{ id: "paper", name: "Packing paper", kind: "paper", useUnit: "sheet" },
};
const tape: Supply = {
  ...PLAIN_SUPPLY,
  id: "tape",
  name: "Carton tape",
  kind: "tape",
  useUnit: "foot",
  material: "carton-tape",
};

const termsOf = (prices: Readonly<Record<string, number>>, supplies: readonly Supply[] = [paper, tape]) =>
  termsOfShop("paper", {
    habits: USUAL_HABITS,
    shelf: draftShelf(supplies),
    supplies: { masses: new Map(), book: new Map(), replacement: new Map(Object.entries(prices)) },
    postage: { card: null, zones: [] },
    today: TODAY,
    bulgeUm: 0,
  });

describe("what a shop packs by", () => {
  it("is its fill with what a sheet fills, weighs and costs, and its tape by the micrometre", () => {
    const shop = termsOf({ paper: 70_000, tape: 1_000 });
    // 52 cu in firm to a sheet of 24 x 36 in: common practice, no source.
    expect(shop?.terms.fill.mlPerUnit).toBeCloseTo(52 * 16.387064, 0);
    expect(shop?.terms.fill).toMatchObject({ massMg: 27_200, value: 70_000 });
    expect(shop?.terms.tape.valuePerUm).toBeCloseTo(1_000 / 304_800, 9);
    expect(shop?.terms.postage(1_000_000, parcelSize([1, 1, 1].map(micrometres), null, "box"))).toBeNull();
  });

  it("names what is not written down and therefore counts as nothing", () => {
    expect(termsOf({ paper: 70_000 })?.notKnown).toEqual([
      "the price of Carton tape",
      "the weight of Carton tape",
    ]);
    expect(termsOf({ paper: 70_000, tape: 1 }, [paper, { ...tape, massMg: 700 }])?.notKnown).toEqual([]);
  });

  it("is nothing where nothing on the shelf fills", () => {
    expect(termsOf({}, [tape])).toBeNull();
  });
});
