import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { saveTried } from "#app/setup/trial/save-tried.ts";
import { saveShop, shopOf } from "#prisma/records/shop";
import { type ShopFixture, shopFixture } from "../../../prisma/records/shop-fixture";

let fixture: ShopFixture;
beforeEach(async () => {
  fixture = await shopFixture();
});
afterEach(() => fixture.close());

describe("using the settings that were tried", () => {
  it("changes these of the shop and nothing else", async () => {
    const { db } = fixture;
    const before = await shopOf(db);
    if (before === null) throw new Error("the fixture has no shop");
    await saveShop(db, { ...before, orderCostMinor: 450, holdingPerMille: 180, guessedParcels: 12 });
    const shop = await shopOf(db);
    if (shop === null) throw new Error("the shop was not saved");
    const promise = { goal: "share", perMille: 980 } as const;
    await saveTried(db, shop, { promise, coverWeeks: 10, reviewDays: 14 });
    expect(await shopOf(db)).toEqual({
      ...shop,
      goal: "share",
      servicePerMille: 980,
      coverWeeks: 10,
      reviewDays: 14,
    });
  });
});
