import { describe, expect, it } from "vitest";
import { nextArrival, urgentPacks } from "#lib/purchasing/plan/urgent-packs";
import { plainOffer, plainQuestion, plainSupplier, plainSupply } from "./small-question";

const offer = plainOffer("paper", "north", { unitsPerPack: 4, leadWeeks: 1 });
const question = (supply: object, supplier: object = {}) =>
  plainQuestion({
    supplies: [
      plainSupply("paper", [3, 3, 3, 3], { stock: 7, ...supply }),
      plainSupply("tape", [0, 0, 0, 0]),
    ],
    suppliers: [plainSupplier("north", 4, supplier)],
    offers: [offer, plainOffer("tape", "north")],
  });

describe("what is urgent", () => {
  it("is what lacks before an order of the next chance arrives, in whole packs", () => {
    // End of weeks 4, 1, -2, -5; the next order, of week 1, arrives in week 2.
    expect(nextArrival(question({}), "paper")).toBe(2);
    expect(urgentPacks(question({}), offer)).toBe(0);
    expect(urgentPacks(question({ wanted: [0, 3, 3, 3] }), offer)).toBe(1);
    expect(urgentPacks(question({}, { orderWeeks: [true, false, false, true] }), offer)).toBe(2);
  });

  it("does not hold back an order that must be filled up to be taken", () => {
    const short = question({ wanted: [0, 3, 3, 3] }, { leastOrderMinor: 500 });
    expect(urgentPacks(short, plainOffer("tape", "north"))).toBe(Number.POSITIVE_INFINITY);
    expect(urgentPacks(question({}, { leastOrderMinor: 500 }), plainOffer("tape", "north"))).toBe(0);
  });
});
