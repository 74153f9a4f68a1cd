import { describe, expect, it } from "vitest";
import type { PackingChoices, SupplyChoice } from "#app/pack/packing-choices.ts";
import { draftFor } from "#app/pack/packing-draft.ts";
import { substitutesFor } from "#app/pack/substitutes-for.ts";
import { describedSupply } from "#lib/packing/described-supply";
import { AMOUNT_PER_UNIT, amount } from "#lib/units/amount";
import { SMALL_CHOICES } from "./small-choices";

const INCH = 25_400;
const [line] = draftFor(SMALL_CHOICES, "mug", "key-0001", SMALL_CHOICES.today).lines;
if (line === undefined) throw new TypeError("the mug's card has lines");
const paper = { ...line, supplyId: "paper", amount: amount(2 * AMOUNT_PER_UNIT) };

/** The supply, described by its kind, its unit and its sizes in inches. */
function described(supply: SupplyChoice, [length, width]: readonly [number, number]): SupplyChoice {
  const of = describedSupply({
    ...supply,
    material: null,
    useUnit: supply.unit,
    lengthUm: length * INCH,
    widthUm: width * INCH,
    heightUm: null,
    sheetNm: null,
    layerUm: null,
    bulkUm: null,
  });
  if (of.kind === "undescribed") throw new TypeError(`${supply.id} lacks ${of.missing}`);
  return { ...supply, draft: of.supply };
}

const SIZES: Readonly<Record<string, readonly [number, number]>> = {
  tissue: [30, 20],
  paper: [36, 24],
  bubble: [12, 12],
};
const withSizes: PackingChoices = {
  ...SMALL_CHOICES,
  supplies: SMALL_CHOICES.supplies.map((supply) => {
    const sizes = SIZES[supply.id];
    return sizes === undefined ? supply : described(supply, sizes);
  }),
};

describe("what may be reached for instead", () => {
  it("is of the same kind and unit first where nothing is described, never tape or a carton", () => {
    expect(substitutesFor(paper, SMALL_CHOICES).map(({ supplyId }) => supplyId)).toEqual([
      "gift-wrap",
      "kraft",
      "tissue",
      "bubble",
    ]);
  });

  it("keeps the amount of the same unit and starts at one of another where nothing is described", () => {
    const [wrap, kraft] = substitutesFor(paper, SMALL_CHOICES);
    expect(wrap).toMatchObject({ amount: 2 * AMOUNT_PER_UNIT, words: "" });
    expect(kraft).toMatchObject({ amount: AMOUNT_PER_UNIT, unit: "foot" });
  });

  it("comes in the trade's amounts where sizes are known: a quarter of the area in small bubble", () => {
    // 2 sheets of 24 × 36 in are 12 sq ft; a quarter of them is 3 sq ft.
    const [bubble] = substitutesFor(paper, withSizes);
    expect(bubble).toMatchObject({ supplyId: "bubble", amount: 3 * AMOUNT_PER_UNIT });
    expect(bubble?.words).toContain("fewer layers");
  });

  it("begins with the shop's own rules", () => {
    const rule = {
      id: "own",
      supplyId: "paper",
      standInId: "foam",
      job: "shock" as const,
      amount: amount(3 * AMOUNT_PER_UNIT),
      insteadOf: amount(2 * AMOUNT_PER_UNIT),
      note: "from the last order",
    };
    const [own, second] = substitutesFor(paper, { ...withSizes, substitutes: [rule] });
    expect(own).toMatchObject({
      supplyId: "foam",
      amount: 3 * AMOUNT_PER_UNIT,
      words: "from the last order",
    });
    expect(second?.supplyId).toBe("bubble");
  });

  it("are at most four, also for a line of nothing", () => {
    expect(substitutesFor({ ...paper, amount: amount(0) }, withSizes)).toHaveLength(4);
    expect(substitutesFor({ ...paper, supplyId: "gone" }, withSizes)).toEqual([]);
  });
});
