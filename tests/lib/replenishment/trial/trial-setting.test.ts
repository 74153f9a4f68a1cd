import { describe, expect, it } from "vitest";
import { playedSupplies } from "#lib/replenishment/trial/played-supplies";
import {
  type ReadySupply,
  readySupply,
  startingSupply,
  trialSetting,
} from "#lib/replenishment/trial/trial-setting";
import type { TrialShop, TrialSpan, TrialTerms } from "#lib/replenishment/trial/trial-shop";
import { comingSpan } from "#lib/replenishment/trial/trial-span";
import { addDays } from "#lib/units/day";
import { TODAY, trialOffer, trialShop, trialSupply } from "./trial-shop";

const terms: TrialTerms = { goal: { kind: "cycles", level: 0.95 }, coverWeeks: 6, reviewDays: 7 };

function readyIn(shop: TrialShop, span: TrialSpan = comingSpan(shop)): ReadySupply {
  const [supply] = playedSupplies(shop, span).played;
  if (supply === undefined) throw new Error("the supply is not played");
  return readySupply(supply, { terms, span, shop });
}

const shopWith = (...offers: Parameters<typeof trialOffer>[0][]) =>
  trialShop({ supplies: [trialSupply({ offers: offers.map(trialOffer) })] });

describe("what a trial begins with", () => {
  it("is the shelf as counted, worth the price of a usual order, in the room of its packs", () => {
    // Nine packs of 10: the break from 5 on is reached, 4.00 for 10; 30 litres a pack.
    const offer = { breaks: [{ fromPacks: 5, priceMinor: 400 }], volumeMl: 30_000 };
    expect(startingSupply(readyIn(shopWith(offer)))).toEqual({
      supplyId: "a",
      startStock: 20,
      arrivals: [],
      unitValue: 40,
      litresPerUnit: 3,
    });
    // Each pack for itself: 4 at 5.00 and 5 at 4.00 are 40.00 for 90.
    const single = readyIn(shopWith({ ...offer, breakKind: "incremental" }));
    expect(startingSupply(single).unitValue).toBeCloseTo(4_000 / 90, 9);
  });

  it("is half an order above the reorder point where the stock of then is not known", () => {
    const useByDay = Array.from({ length: 70 }, (_, at) => ({
      day: addDays(TODAY, at - 70),
      amount: trialOffer().packAmount,
    }));
    const shop = trialShop({ supplies: [trialSupply({ useByDay })] });
    const ready = readyIn(shop, { kind: "past", firstDay: addDays(TODAY, -7), days: 7 });
    const [first] = ready.levels.checks;
    // 10 a day for 6 weeks are 420.
    expect(startingSupply(ready).startStock).toBeCloseTo((first?.reorderPoint ?? 0) + 210, 9);
  });
});

describe("the setting of a trial", () => {
  const settingOf = (shop: TrialShop) => {
    const ready = readyIn(shop);
    const supplies = [startingSupply(ready)];
    return trialSetting([ready], { supplies, terms, span: comingSpan(shop), shop });
  };
  const leadTimes = (shop: TrialShop, day: number) => {
    const [supplier] = settingOf(shop).suppliers;
    return typeof supplier?.leadTimes === "function" ? supplier.leadTimes(day) : supplier?.leadTimes;
  };

  it("has the suppliers' terms, and the lead times of the day of each order", () => {
    expect(settingOf(trialShop())).toMatchObject({
      reviewDays: 7,
      firstCheck: 0,
      unmet: "met-later",
      suppliers: [{ supplierId: "s", delivery: { charge: 800, freeFrom: null }, leastValue: null }],
      offers: [{ offerId: "ten", packAmount: 10 }],
    });
    expect(leadTimes(trialShop(), 5)).toEqual([{ days: 3, chance: 1 }]);
    // What would come on a closed day waits for the next open one.
    const closed = [{ fromDay: addDays(TODAY, 8), toDay: addDays(TODAY, 11) }];
    const shop = trialShop({ calendar: closed });
    expect(leadTimes(shop, 4)).toEqual([{ days: 3, chance: 1 }]);
    expect(leadTimes(shop, 5)).toEqual([{ days: 7, chance: 1 }]);
  });

  it("asks for suppliers that sell something", () => {
    const idle = { supplierId: "idle", delivery: { charge: 0, freeFrom: null }, leastValue: null };
    expect(() => settingOf(trialShop({ suppliers: [...trialShop().suppliers, idle] }))).toThrow(
      /suppliers of an offer, got idle/,
    );
  });
});
