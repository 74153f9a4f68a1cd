import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { GET } from "#app/api/forecast/route.ts";
import { inTransaction } from "#prisma/client";
import { recordParcel } from "#prisma/records/parcels";
import { parcelBody, type ShopFixture, shopFixture } from "../../prisma/records/shop-fixture";

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
  globalThis.waddingDatabase = Promise.resolve(shop.db);
});
afterEach(() => shop.close());

const ask = (query: string) => GET(new Request(`http://127.0.0.1:3000/api/forecast${query}`));

describe("GET /api/forecast", () => {
  it("answers with parcels, pieces and use of each coming week", async () => {
    const by = { device: "desk", now: "2026-03-10T12:00:00.000Z" } as const;
    await recordParcel(shop.db, parcelBody("one", { packedOn: "2026-03-10" }), by);
    const answer = await ask("?today=2026-03-10");
    expect(answer.status).toBe(200);
    const body = await answer.json();
    expect(body.asOf).toBe("2026-03-10");
    // One parcel on the only day there is.
    expect(body.parcels.path.perWeek[0]).toBeCloseTo(7, 6);
    expect(Object.keys(body.itemTypes)).toEqual(["mug"]);
    expect(body.supplies.paper.path.perWeek.length).toBe(53);
  });

  it("says which day it could not read", async () => {
    const answer = await ask("?today=2026-13-01");
    expect(answer.status).toBe(400);
    expect(await answer.json()).toMatchObject({ kind: "unreadable-day", typed: "2026-13-01" });
  });

  it("says so where there is no shop yet", async () => {
    await inTransaction(shop.db, (tx) => tx.shop.deleteMany());
    const answer = await ask("");
    expect(answer.status).toBe(404);
    expect(await answer.json()).toEqual({ kind: "no-shop" });
  });
});
