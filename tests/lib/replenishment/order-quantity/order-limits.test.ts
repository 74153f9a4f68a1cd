import { describe, expect, it } from "vitest";
import {
  brokenLimits,
  deliveryCharge,
  mostPacksByLimit,
} from "#lib/replenishment/order-quantity/order-limits";
import { orderTerms } from "./order-terms";

describe("limits of an order", () => {
  it("allow most packs each, worked by hand", () => {
    // 25 a week, 50 there: 12 weeks use 300, 5 weeks 125, 8 weeks 200.
    const most = mostPacksByLimit(
      orderTerms({
        stockOnArrival: 50,
        shelfLifeDays: 84,
        longestCoverWeeks: 5,
        daysUntilEnd: 56,
        room: { litres: 35, litresPerPack: 10 },
        mostPacks: 4,
      }),
    );
    expect(Object.fromEntries(most)).toEqual({
      "shelf-life": 2,
      "longest-cover": 0,
      "planned-end": 2,
      room: 3,
      "largest-order": 4,
    });
  });

  it("are as many as are set", () => {
    expect(mostPacksByLimit(orderTerms()).size).toBe(0);
    expect(mostPacksByLimit(orderTerms({ room: { litres: 5, litresPerPack: 0 } })).size).toBe(0);
  });

  it("do not lose a pack to rounding", () => {
    // A use of 0.1 a week over 30 weeks is 3 packs of 1.
    const most = mostPacksByLimit(
      orderTerms({ packAmount: 1, usePerWeek: 0.1, longestCoverWeeks: 30, daysUntilEnd: 210 }),
    );
    expect(Object.fromEntries(most)).toEqual({ "longest-cover": 3, "planned-end": 3 });
  });

  it("begin the last pack before a planned end, none that would stay whole", () => {
    const end = (stockOnArrival: number) =>
      mostPacksByLimit(orderTerms({ stockOnArrival, daysUntilEnd: 56 })).get("planned-end");
    expect([0, 99, 100, 199, 200, 500].map(end)).toEqual([2, 2, 1, 1, 0, 0]);
  });

  it("are broken by cash with the delivery counted in, and by less than the supplier sends", () => {
    const question = orderTerms({
      cash: 4600,
      leastPacks: 2,
      leastValue: 3900,
      prices: {
        steps: [
          { from: 0, price: 2000 },
          { from: 3, price: 1300 },
          { from: 5, price: 1100 },
        ],
        pricing: "all-units",
      },
      delivery: { charge: 600, freeFrom: 5000 },
    });
    const broken = (packs: number) => brokenLimits(question, new Map(), packs);
    // 2000, 4000 + 600, 3900 + 600, 5200, 5500.
    expect([1, 2, 3, 4, 5].map(broken)).toEqual([["least-order"], [], [], ["cash"], ["cash"]]);
    expect([2000, 4999, 5000].map((goods) => deliveryCharge(question, goods))).toEqual([600, 600, 0]);
  });
});
