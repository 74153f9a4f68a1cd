import { describe, expect, it } from "vitest";
import { orderPacks } from "#lib/replenishment/order-quantity/order-packs";
import { itemByItemPolicy } from "#lib/replenishment/simulation/item-by-item-policy";
import { orderTerms } from "../order-quantity/order-terms";

const rule = { supplyId: "paper", offerId: "ream", reorderPoint: () => 50 };
const state = (position: number) => ({
  day: 0,
  supplies: new Map([["paper", { onHand: position, owed: 0, onOrder: [], position }]]),
});

describe("ordering item by item", () => {
  it("orders what would be best if the supply bore the whole delivery charge", () => {
    const question = orderTerms();
    const policy = itemByItemPolicy([{ ...rule, question }]);
    expect(policy(state(50))).toEqual([{ offerId: "ream", packs: orderPacks(question).packs }]);
    expect(policy(state(51))).toEqual([]);
  });

  it("never orders what is not used", () => {
    expect(itemByItemPolicy([{ ...rule, question: orderTerms({ usePerWeek: 0 }) }])(state(0))).toEqual([]);
  });

  it("says which limits allow no order", () => {
    const question = orderTerms({ cash: 100, shelfLifeDays: 3 });
    expect(() => itemByItemPolicy([{ ...rule, question }])).toThrow(
      /order of paper, got limits shelf-life, cash/,
    );
  });
});
