import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { day } from "#lib/units/day";
import { itemTypesOf, saveItemType } from "#prisma/records/item-types";
import { voidParcel } from "#prisma/records/parcel-corrections";
import { recordParcel } from "#prisma/records/parcels";
import { type SentRow, sentKinds } from "#prisma/records/sent-kinds";
import { saveZone } from "#prisma/records/zones";
import { parcelBody, type ShopFixture, shopFixture } from "./shop-fixture";

const by = { device: "desk", now: "2026-03-20T12:00:00.000Z" };
const MUG = { itemTypeId: "mug", pieces: 1 };
const VASES = { itemTypeId: "tall vase", pieces: 2 };
const MARCH = { from: day("2026-03-01"), to: day("2026-03-31") };

describe("parcels sent alike", () => {
  let shop: ShopFixture;
  let kinds: SentRow[];

  const record = async (id: string, changes: Parameters<typeof parcelBody>[1]) => {
    expect(await recordParcel(shop.db, parcelBody(id, changes), by)).toMatchObject({ kind: "recorded" });
  };

  beforeAll(async () => {
    shop = await shopFixture();
    const [mug] = await itemTypesOf(shop.db);
    if (mug === undefined) throw new Error("the fixture has no item type");
    await saveItemType(shop.db, { ...mug, id: "tall vase", name: "Tall vase" });
    await saveZone(shop.db, { id: "far", name: "Far", retired: false, position: 1 });
    await record("mug-1", { packedOn: "2026-03-01" });
    await record("mug-2", { packedOn: "2026-03-31" });
    await record("mug-3", { cartons: [{ supplyId: null, sizesTyped: "9 x 7 x 6" }] });
    await record("far", { zoneId: "far" });
    await record("no-zone-1", { zoneId: null });
    await record("no-zone-2", { zoneId: null });
    await record("bubble", { style: "bubble" });
    await record("both-1", { pieces: [MUG, VASES] });
    await record("both-2", {
      pieces: [VASES, MUG],
      cartons: [{ supplyId: "carton-8" }, { supplyId: "carton-8" }],
    });
    await record("two-mugs", { pieces: [{ ...MUG, pieces: 2 }] });
    await record("unusual", { unusual: true });
    await record("voided", {});
    await voidParcel(shop.db, "voided", "typed twice", by);
    await record("before", { packedOn: "2026-02-28" });
    await record("after", { packedOn: "2026-04-01" });
    kinds = await sentKinds(shop.db, MARCH);
  });
  afterAll(() => shop.close());

  it("stand together by pieces, style and zone, the most frequent first", () => {
    expect(kinds[0]).toEqual({ pieces: [MUG], style: "paper", zoneId: "near", parcels: 3 });
    expect(kinds.map(({ parcels }) => parcels)).toEqual([3, 2, 2, 1, 1, 1]);
    expect(kinds.filter(({ style }) => style === "bubble")).toEqual([
      { pieces: [MUG], style: "bubble", zoneId: "near", parcels: 1 },
    ]);
    expect(kinds.filter(({ zoneId }) => zoneId === "far")).toMatchObject([{ pieces: [MUG], parcels: 1 }]);
  });

  it("have no zone where none was noted, and those stand together", () => {
    expect(kinds.filter(({ zoneId }) => zoneId === null)).toEqual([
      { pieces: [MUG], style: "paper", zoneId: null, parcels: 2 },
    ]);
  });

  it("hold several item types by their id, in whatever order they were named and in whatever cartons", () => {
    const several = kinds.filter(({ pieces }) => pieces.length > 1);
    expect(several).toEqual([{ pieces: [MUG, VASES], style: "paper", zoneId: "near", parcels: 2 }]);
    expect(kinds.filter(({ pieces }) => pieces[0]?.pieces === 2)).toMatchObject([{ parcels: 1 }]);
  });

  it("leave out voided ones, unusual ones and other days, and have both ends of the span", async () => {
    expect(kinds.reduce((sum, { parcels }) => sum + parcels, 0)).toBe(10);
    const one = await sentKinds(shop.db, { from: day("2026-02-28"), to: day("2026-03-01") });
    expect(one).toMatchObject([{ pieces: [MUG], parcels: 2 }]);
    expect(await sentKinds(shop.db, { from: day("2025-01-01"), to: day("2025-12-31") })).toEqual([]);
  });
});
