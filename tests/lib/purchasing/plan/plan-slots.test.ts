import { describe, expect, it } from "vitest";
import { planSlots } from "#lib/purchasing/plan/plan-slots";
import { plainOffer, plainQuestion, plainSupplier, plainSupply } from "./small-question";

const mosts = (supply: object, offer: object, supplier: object = {}) =>
  planSlots(
    plainQuestion({
      supplies: [plainSupply("paper", [10, 10, 10], supply)],
      suppliers: [plainSupplier("north", 3, supplier)],
      offers: [plainOffer("paper", "north", { unitsPerPack: 4, ...offer })],
    }),
  ).map(({ week, most }) => [week, most]);

describe("places for an order", () => {
  it("are the weeks with an order chance whose arrival still counts, with packs for the need", () => {
    expect(mosts({}, {})).toEqual([
      [0, 8],
      [1, 8],
      [2, 8],
    ]);
    expect(mosts({}, { leadWeeks: 1 }, { orderWeeks: [true, false, true] })).toEqual([[0, 8]]);
  });

  it("hold no more than the stock allowed, the most packs, and nothing where nothing is lacking", () => {
    expect(mosts({ most: [13, 20, 25] }, {})).toEqual([
      [0, 3],
      [1, 7],
      [2, 8],
    ]);
    expect(mosts({}, { mostPacks: 2 })).toEqual([
      [0, 2],
      [1, 2],
      [2, 2],
    ]);
    expect(mosts({ stock: 30, most: [30, 20, 10] }, {})).toEqual([]);
  });

  it("go beyond the need for a cheaper step, a least order or free delivery that pays", () => {
    const steps = [
      { fromPacks: 1, priceMinor: 100 },
      { fromPacks: 9, priceMinor: 80 },
    ];
    expect(mosts({}, { steps })[0]).toEqual([0, 9]);
    expect(mosts({}, {}, { leastOrderMinor: 1050 })[0]).toEqual([0, 11]);
    expect(mosts({}, {}, { deliveryMinor: 250, freeFromMinor: 1000 })[0]).toEqual([0, 10]);
    expect(mosts({}, {}, { deliveryMinor: 90, freeFromMinor: 1000 })[0]).toEqual([0, 8]);
  });

  it("hold the packs beyond a least order that reach free delivery, or a step that makes it cheap", () => {
    // From 10 packs on, the least order, one more saves 50 of delivery for 30 that it loses until the end.
    const keen = { endValueMinor: 17.5, use: [4, 0, 0] };
    expect(mosts(keen, {}, { leastOrderMinor: 1000, freeFromMinor: 1050, deliveryMinor: 50 })[0]).toEqual([
      0, 11,
    ]);
    const steps = [
      { fromPacks: 1, priceMinor: 100 },
      { fromPacks: 12, priceMinor: 75 },
    ];
    // Ten at 100 lose 300, fourteen at 75 only 70, and both reach 1000.
    expect(mosts(keen, { steps }, { leastOrderMinor: 1000 })[0]).toEqual([0, 14]);
    expect(mosts({ stock: 40 }, {})).toEqual([]);
  });

  it("take parts of a unit as they are", () => {
    expect(mosts({ most: [7.9, 40, 40] }, { unitsPerPack: 3.9 })[0]).toEqual([0, 2]);
  });

  it("ask for a most stock where a unit left is worth more than it costs", () => {
    expect(() => mosts({ endValueMinor: 26 }, {})).toThrow(/most stock for supply paper/);
    expect(mosts({ endValueMinor: 26, most: [60, 60, 60] }, {})[0]).toEqual([0, 15]);
  });
});
