import { describe, expect, it } from "vitest";
import { type PlayedSupply, playedSupplies } from "#lib/replenishment/trial/played-supplies";
import type { TrialTerms } from "#lib/replenishment/trial/trial-shop";
import { comingSpan } from "#lib/replenishment/trial/trial-span";
import { coverOn, usualOrder } from "#lib/replenishment/trial/usual-order";
import { amountOfUnits } from "#lib/units/amount";
import { addDays } from "#lib/units/day";
import { onTime } from "../on-time";
import { TODAY, trialOffer, trialShop, trialSupply } from "./trial-shop";

const terms: TrialTerms = { goal: { kind: "cycles", level: 0.95 }, coverWeeks: 6, reviewDays: 7 };
const question = { day: TODAY, terms, calendar: [] };

function supplyOf(...offers: Parameters<typeof trialOffer>[0][]): PlayedSupply {
  const supplies = [trialSupply({ offers: offers.map(trialOffer) })];
  const [supply] = playedSupplies(trialShop({ supplies }), comingSpan(trialShop())).played;
  if (supply === undefined) throw new Error("the supply is not played");
  return supply;
}

describe("the usual order of a trial", () => {
  it("lasts the cover weeks in whole packs: 84 of 14 a week make 9 packs of 10", () => {
    expect(usualOrder(supplyOf({}), question)).toMatchObject({ packs: 9, offer: { offerId: "ten" } });
    expect(usualOrder(supplyOf({}), { ...question, terms: { ...terms, coverWeeks: 1 } }).packs).toBe(2);
  });

  it("takes the offer that is cheapest at that size, price breaks reached or not", () => {
    const box = {
      offerId: "box",
      packAmount: amountOfUnits(40),
      priceMinor: 2_400,
      breaks: [{ fromPacks: 3, priceMinor: 1_600 }],
    };
    const both = supplyOf({}, box);
    expect(usualOrder(both, question)).toMatchObject({ packs: 3, offer: { offerId: "box" } });
    const small = { ...question, terms: { ...terms, coverWeeks: 5 } };
    expect(usualOrder(both, small)).toMatchObject({ packs: 7, offer: { offerId: "ten" } });
  });

  it("covers the weeks from the day that an order of the next check would come", () => {
    const { until, covered } = coverOn(supplyOf({}), { ...question, delivery: onTime(3) });
    expect(until).toBe(addDays(TODAY, 10));
    expect(covered).toBeCloseTo(84, 9);
    const closed = [{ fromDay: addDays(TODAY, 20), toDay: addDays(TODAY, 26) }];
    expect(coverOn(supplyOf({}), { ...question, delivery: onTime(3), calendar: closed }).covered).toBeCloseTo(
      70,
      9,
    );
  });
});
