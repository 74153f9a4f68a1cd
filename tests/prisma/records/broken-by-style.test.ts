import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { day } from "#lib/units/day";
import { inTransaction } from "#prisma/client";
import { brokenByStyle } from "#prisma/records/broken-by-style";
import { voidParcel } from "#prisma/records/parcel-corrections";
import { recordParcel } from "#prisma/records/parcels";
import { parcelBody, type ShopFixture, shopFixture } from "./shop-fixture";

const by = { device: "desk", now: "2026-03-20T12:00:00.000Z" };

describe("what broke in each cushion style", () => {
  let shop: ShopFixture;
  beforeAll(async () => {
    shop = await shopFixture();
    for (const [id, style, packedOn] of [
      ["one", "paper", "2026-03-02"],
      ["two", "paper", "2026-03-03"],
      ["three", "bubble", "2026-03-03"],
      ["voided", "paper", "2026-03-03"],
      ["before", "paper", "2026-02-28"],
    ] as const) {
      await recordParcel(shop.db, parcelBody(id, { style, packedOn }), by);
    }
    await voidParcel(shop.db, "voided", "typed twice", by);
    await inTransaction(shop.db, (tx) =>
      tx.parcel.updateMany({
        where: { id: { in: ["two", "voided", "before"] } },
        data: { brokenOn: "2026-03-09" },
      }),
    );
  });
  afterAll(() => shop.close());

  it("is counted of parcels since the day that were not voided", async () => {
    expect(await brokenByStyle(shop.db, day("2026-03-01"))).toEqual({
      paper: { parcels: 2, broken: 1 },
      bubble: { parcels: 1, broken: 0 },
      mixed: { parcels: 0, broken: 0 },
    });
  });
});
