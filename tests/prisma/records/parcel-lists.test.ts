import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Recorder } from "#prisma/records/ledger";
import type { ParcelBody } from "#prisma/records/parcel-body";
import { correctParcel, markBroken, voidParcel } from "#prisma/records/parcel-corrections";
import type { ParcelFilter } from "#prisma/records/parcel-filter";
import { parcelCount, parcelOf, parcelsOf } from "#prisma/records/parcel-lists";
import { recordParcel } from "#prisma/records/parcels";
import { saveZone } from "#prisma/records/zones";
import { paperParcel } from "./paper-parcel";
import { pricedShop } from "./priced-shop";
import { parcelBody, type ShopFixture } from "./shop-fixture";

const by: Recorder = { device: "desk", now: "2026-03-10T12:00:00.000Z" };

let shop: ShopFixture;
beforeEach(async () => {
  shop = await pricedShop();
});
afterEach(() => shop.close());

async function found(filter: ParcelFilter): Promise<string[]> {
  const parcels = await parcelsOf(shop.db, { ...filter, limit: 50 });
  expect(await parcelCount(shop.db, filter)).toBe(parcels.length);
  return parcels.map(({ id }) => id).sort();
}

const record = (id: string, changes: Partial<ParcelBody> = {}) =>
  recordParcel(shop.db, parcelBody(id, changes), by);

describe("the list of parcels", () => {
  beforeEach(async () => {
    await saveZone(shop.db, { id: "far", name: "Far", retired: false, position: 1 });
    await record("parcel-1");
    await record("parcel-2", { packedOn: "2026-03-01", style: "bubble", zoneId: "far", cartons: [] });
    const light = { promised: { mg: 900_000, typed: "900 g" }, scaleTyped: "900 g" };
    await record("parcel-3", { ...light, scaleMg: 900_000 });
    await record("parcel-4", { ...light, scaleMg: 900_001 });
    await markBroken(shop.db, "parcel-3", { on: "2026-03-14", cause: "crushed", note: "rim" });
  });

  it("is narrowed by days, style, carton, zone and state, and by several at once", async () => {
    const cases: [ParcelFilter, string[]][] = [
      [{ from: "2026-03-01", to: "2026-03-09" }, ["parcel-2"]],
      [{ style: "bubble" }, ["parcel-2"]],
      [{ cartonId: "carton-8" }, ["parcel-1", "parcel-3", "parcel-4"]],
      [{ zoneId: "far" }, ["parcel-2"]],
      [{ zoneId: "nowhere" }, []],
      [{ state: "broken" }, ["parcel-3"]],
      [{ state: "promise-broken" }, ["parcel-4"]],
      [{ state: "unweighed" }, ["parcel-1", "parcel-2"]],
      [{ state: "unweighed", style: "paper", zoneId: "near" }, ["parcel-1"]],
    ];
    for (const [filter, ids] of cases) expect(await found(filter), JSON.stringify(filter)).toEqual(ids);
  });

  it("has voided parcels in none of its states", async () => {
    await voidParcel(shop.db, "parcel-4", "never sent", by);
    await voidParcel(shop.db, "parcel-1", "never sent", by);
    expect(await found({ state: "promise-broken" })).toEqual([]);
    expect(await found({ state: "unweighed" })).toEqual(["parcel-2"]);
    expect(await found({ zoneId: "near" })).toEqual(["parcel-1", "parcel-3", "parcel-4"]);
  });

  it("goes on after the last parcel of a page", async () => {
    const first = await parcelsOf(shop.db, { limit: 3 });
    const rest = await parcelsOf(shop.db, { limit: 3, before: first.at(-1)?.id ?? "" });
    expect([...first, ...rest].map(({ id }) => id).sort()).toEqual([
      "parcel-1",
      "parcel-2",
      "parcel-3",
      "parcel-4",
    ]);
  });
});

describe("the cost of a parcel", () => {
  it("is what stands of it: a line of unknown cost that was taken back does not hide it", async () => {
    const body = parcelBody("parcel-1");
    const [paper] = body.lines;
    await record("parcel-1");
    expect((await parcelOf(shop.db, "parcel-1"))?.costValue).toBeNull();
    await correctParcel(shop.db, { ...body, lines: paper === undefined ? [] : [paper] }, by);
    // Seven sheets of 7 cents and a carton of 90; the bubble, whose cost nobody knows, is out again.
    expect((await parcelOf(shop.db, "parcel-1"))?.costValue).toBe(1_390_000);
  });

  it("is not made up for a void parcel", async () => {
    await recordParcel(shop.db, paperParcel("parcel-1", 1), by);
    expect((await parcelOf(shop.db, "parcel-1"))?.costValue).toBe(970_000);
    await voidParcel(shop.db, "parcel-1", "never sent", by);
    expect((await parcelOf(shop.db, "parcel-1"))?.costValue).toBeNull();
  });
});
