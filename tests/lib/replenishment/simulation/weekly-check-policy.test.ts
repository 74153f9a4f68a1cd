import { describe, expect, it } from "vitest";
import { weeklyCheckPolicy } from "#lib/replenishment/simulation/weekly-check-policy";

const state = (position: number, day = 0) => ({
  day,
  supplies: new Map([["paper", { onHand: 0, owed: 0, onOrder: [], position }]]),
});
const rule = { supplyId: "paper", offerId: "ream", packAmount: 100, reorderPoint: () => 250, packs: 2 };

describe("the weekly check as a way to order", () => {
  it("orders at or under the reorder point, and enough to be above it", () => {
    const packsAt = (position: number) => weeklyCheckPolicy([rule])(state(position))[0]?.packs ?? 0;
    expect([251, 250, 249, 151, 150, 51, 50, -200].map(packsAt)).toEqual([0, 2, 2, 2, 2, 2, 3, 5]);
  });

  it("follows a reorder point that changes with the day", () => {
    const policy = weeklyCheckPolicy([{ ...rule, reorderPoint: (day) => (day < 7 ? 100 : 300) }]);
    expect(policy(state(200, 0))).toEqual([]);
    expect(policy(state(200, 7))).toEqual([{ offerId: "ream", packs: 2 }]);
  });

  it("names what is wrong with a rule or a shop", () => {
    expect(() => weeklyCheckPolicy([{ ...rule, packs: 0 }])).toThrow(/packs from 1 of ream, got 0 of 100/);
    expect(() => weeklyCheckPolicy([{ ...rule, supplyId: "tape" }])(state(1))).toThrow(
      /stock of tape, got none/,
    );
  });
});
