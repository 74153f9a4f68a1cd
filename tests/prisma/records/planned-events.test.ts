import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { PlannedEvent } from "#lib/forecast/planned-event";
import { day } from "#lib/units/day";
import { itemTypesOf, saveItemType } from "#prisma/records/item-types";
import { plannedEventsOf, removePlannedEvent, savePlannedEvent } from "#prisma/records/planned-events";
import { type ShopFixture, shopFixture } from "./shop-fixture";

const market: PlannedEvent = {
  id: "market",
  name: "Christmas market",
  fromDay: day("2026-12-01"),
  toDay: day("2026-12-14"),
  upliftPercent: 50,
  itemTypeIds: [],
};
const offer: PlannedEvent = {
  id: "offer",
  name: "Mugs on offer",
  fromDay: day("2026-11-27"),
  toDay: day("2026-11-28"),
  upliftPercent: 100,
  itemTypeIds: ["mug"],
};

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
});
afterEach(() => shop.close());

describe("planned events", () => {
  it("come back as they were saved, earliest first", async () => {
    await savePlannedEvent(shop.db, market);
    await savePlannedEvent(shop.db, offer);
    expect(await plannedEventsOf(shop.db)).toEqual([offer, market]);
  });

  it("take a change as a whole, the item types included", async () => {
    const [mug] = await itemTypesOf(shop.db);
    if (mug === undefined) throw new TypeError("the fixture has an item type");
    await saveItemType(shop.db, { ...mug, id: "vase", name: "Vase" });
    await savePlannedEvent(shop.db, offer);
    const changed = { ...offer, toDay: day("2026-11-29"), upliftPercent: -20, itemTypeIds: ["vase"] };
    await savePlannedEvent(shop.db, changed);
    expect(await plannedEventsOf(shop.db)).toEqual([changed]);
  });

  it("are gone with their item types once taken off", async () => {
    await savePlannedEvent(shop.db, market);
    await savePlannedEvent(shop.db, offer);
    await removePlannedEvent(shop.db, "offer");
    expect(await plannedEventsOf(shop.db)).toEqual([market]);
    expect(await shop.db.plannedEventItemType.count()).toBe(0);
  });

  it("keep nothing of an event with an item type that the shop does not know", async () => {
    await savePlannedEvent(shop.db, offer);
    const wrong = { ...offer, name: "Jugs on offer", itemTypeIds: ["jug"] };
    await expect(savePlannedEvent(shop.db, wrong)).rejects.toThrow();
    expect(await plannedEventsOf(shop.db)).toEqual([offer]);
  });
});
