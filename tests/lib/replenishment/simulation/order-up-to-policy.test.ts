import { describe, expect, it } from "vitest";
import { orderUpToPolicy } from "#lib/replenishment/simulation/order-up-to-policy";

const rule = { supplyId: "a", offerId: "five", packAmount: 5, reorderPoint: 6, orderUpTo: 20 };
const state = (position: number) => ({
  day: 0,
  supplies: new Map([["a", { onHand: 0, owed: 0, onOrder: [], position }]]),
});

describe("two levels as a way to order", () => {
  it("order at or under the lower one, by the fewest packs that reach the upper one", () => {
    const packsAt = (position: number) => orderUpToPolicy([rule])(state(position))[0]?.packs ?? 0;
    expect([7, 6, 5, 4, 0, -3].map(packsAt)).toEqual([0, 3, 3, 4, 4, 5]);
  });

  it("name what is wrong with a rule or a shop", () => {
    expect(() => orderUpToPolicy([{ ...rule, orderUpTo: 6 }])).toThrow(/of a, got 5, 6 and 6/);
    expect(() => orderUpToPolicy([{ ...rule, supplyId: "b" }])(state(1))).toThrow(/stock of b, got none/);
  });
});
