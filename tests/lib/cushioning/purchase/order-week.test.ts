import { describe, expect, it } from "vitest";
import { mostUse, orderWeek } from "#lib/cushioning/purchase/order-week";
import { plainMix, plainMixOffer, plainMixSupply, plainWay } from "./small-mix";

const question = plainMix({
  supplies: [plainMixSupply("paper", { onHand: 30, keep: 4, leftMinor: 2, litresPerUnit: 0.5 })],
  offers: [plainMixOffer("paper")],
  types: [
    { id: "cup", parcels: 2.5, ways: [plainWay("paper", "paper", 4, 0), plainWay("mixed", "paper", 6, 0)] },
    { id: "bowl", parcels: 3, ways: [plainWay("bubble", "bubble", 6, 0)] },
  ],
  limits: { cashMinor: 900, litres: 10 },
});

describe("the purchase of a mix as one week", () => {
  it("uses the most that any way takes of a supply", () => {
    expect(mostUse(question, "paper")).toBe(15);
    expect(mostUse(question, "bubble")).toBe(18);
    expect(mostUse(question, "tape")).toBe(0);
  });

  it("carries stock, what is kept, worth, offers and cash over", () => {
    const week = orderWeek(question);
    expect(week.supplies[0]).toMatchObject({
      stock: 30,
      use: [15],
      wanted: [4],
      endValueMinor: 2,
      litres: 0.5,
    });
    expect(week.offers[0]).toMatchObject({ id: "paper of north", leadWeeks: 0 });
    expect(week.limits.cash).toEqual([{ throughWeek: 0, minor: 900 }]);
  });

  it("has room for what is on hand, and no more where that takes more than there is", () => {
    expect(orderWeek(question).limits.litres).toBe(15);
    expect(orderWeek({ ...question, limits: { cashMinor: null, litres: 40 } }).limits).toEqual({
      cash: [],
      litres: 40,
    });
  });
});
