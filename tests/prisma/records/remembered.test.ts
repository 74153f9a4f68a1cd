import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { closeDatabase, openDatabase } from "#prisma/client";
import { rememberedUntilWritten } from "#prisma/records/remembered";
import { saveZone, zonesOf } from "#prisma/records/zones";
import { type ShopFixture, shopFixture } from "./shop-fixture";

const far = { id: "far", name: "Far", retired: false, position: 1 };

let shop: ShopFixture;
let made: number;
beforeEach(async () => {
  shop = await shopFixture();
  made = 0;
});
afterEach(() => shop.close());

const zoneNames = async () => {
  made += 1;
  return (await zonesOf(shop.db)).map((zone) => zone.name);
};

describe("a value remembered until the database is written", () => {
  it("is made once while nothing is written, also where two ask at once", async () => {
    const two = [0, 1].map(() => rememberedUntilWritten(shop.db, "zones", zoneNames));
    expect(await Promise.all(two)).toEqual([["Near"], ["Near"]]);
    expect(await rememberedUntilWritten(shop.db, "zones", zoneNames)).toEqual(["Near"]);
    expect(made).toBe(1);
  });

  it("is made anew after a write of this process", async () => {
    await rememberedUntilWritten(shop.db, "zones", zoneNames);
    await saveZone(shop.db, far);
    expect(await rememberedUntilWritten(shop.db, "zones", zoneNames)).toEqual(["Near", "Far"]);
  });

  it("is made anew after a write through another opening of the file", async () => {
    await rememberedUntilWritten(shop.db, "zones", zoneNames);
    const other = await openDatabase(shop.file);
    await saveZone(other, far);
    await closeDatabase(other);
    expect(await rememberedUntilWritten(shop.db, "zones", zoneNames)).toEqual(["Near", "Far"]);
  });

  it("is made anew the next time where something was written while it was made", async () => {
    await rememberedUntilWritten(shop.db, "zones", async () => {
      const names = await zoneNames();
      await saveZone(shop.db, far);
      return names;
    });
    expect(await rememberedUntilWritten(shop.db, "zones", zoneNames)).toEqual(["Near", "Far"]);
  });

  it("belongs to its key", async () => {
    await rememberedUntilWritten(shop.db, "zones", zoneNames);
    expect(await rememberedUntilWritten(shop.db, "first zone", async () => "Near")).toBe("Near");
  });

  it("goes when many others were asked for since", async () => {
    await rememberedUntilWritten(shop.db, "zones", zoneNames);
    for (let key = 0; key < 16; key += 1) await rememberedUntilWritten(shop.db, String(key), async () => key);
    await rememberedUntilWritten(shop.db, "zones", zoneNames);
    expect(made).toBe(2);
  });

  it("is not kept where it failed", async () => {
    const failing = rememberedUntilWritten(shop.db, "zones", () => Promise.reject(new Error("not now")));
    await expect(failing).rejects.toThrow("not now");
    expect(await rememberedUntilWritten(shop.db, "zones", zoneNames)).toEqual(["Near"]);
  });
});
