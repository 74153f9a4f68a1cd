import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { cartonUseDays, firstPackedDay } from "#prisma/records/carton-use-days";
import { recordCount } from "#prisma/records/counts";
import { returnParcel, voidParcel } from "#prisma/records/parcel-corrections";
import { recordParcel } from "#prisma/records/parcels";
import { parcelBody, type ShopFixture, shopFixture } from "./shop-fixture";

const by = { device: "desk", now: "2026-03-20T12:00:00.000Z" };
const FROM = day("2026-03-01");

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
});
afterEach(() => shop.close());

describe("days on which a carton was used", () => {
  const record = (id: string, changes: Parameters<typeof parcelBody>[1]) =>
    recordParcel(shop.db, parcelBody(id, changes), by);
  const used = async () => (await cartonUseDays(shop.db, FROM)).get("carton-8");

  it("are by day, oldest first, whole cartons, unusual parcels too, and of cartons alone", async () => {
    await record("late", { packedOn: "2026-03-12" });
    await record("early", { packedOn: "2026-03-04" });
    await record("unusual", { packedOn: "2026-03-04", unusual: true });
    await record("too early", { packedOn: "2026-02-28" });
    expect(await used()).toEqual([
      { day: "2026-03-04", cartons: 2 },
      { day: "2026-03-12", cartons: 1 },
    ]);
    expect([...(await cartonUseDays(shop.db, FROM)).keys()]).toEqual(["carton-8"]);
  });

  it("take back what came back, and know nothing of counts", async () => {
    await record("a", { packedOn: "2026-03-04" });
    const lines = [{ supplyId: "carton-8", amount: amountOfUnits(1) }];
    await returnParcel(shop.db, "a", { on: "2026-03-15", lines }, by);
    await recordCount(
      shop.db,
      {
        id: "count",
        supplyId: "carton-8",
        amount: amountOfUnits(9),
        method: "number",
        typed: "9",
        note: null,
        countedAt: "2026-03-16T09:00:00.000Z",
      },
      by,
    );
    expect(await used()).toEqual([
      { day: "2026-03-04", cartons: 1 },
      { day: "2026-03-15", cartons: -1 },
    ]);
  });

  it("are none before the first parcel", async () => {
    expect((await cartonUseDays(shop.db, FROM)).size).toBe(0);
  });
});

describe("the first day on which anything was packed", () => {
  it("is null before the first parcel, then the earliest day of those in force", async () => {
    expect(await firstPackedDay(shop.db)).toBeNull();
    await recordParcel(shop.db, parcelBody("later", { packedOn: "2026-03-10" }), by);
    await recordParcel(shop.db, parcelBody("first", { packedOn: "2026-03-03" }), by);
    expect(await firstPackedDay(shop.db)).toBe("2026-03-03");
    await voidParcel(shop.db, "first", "undone", by);
    expect(await firstPackedDay(shop.db)).toBe("2026-03-10");
  });
});
