import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { day } from "#lib/units/day";
import { itemTypesOf, saveItemType } from "#prisma/records/item-types";
import { type PackedKind, packedKinds } from "#prisma/records/packed-kinds";
import { voidParcel } from "#prisma/records/parcel-corrections";
import { recordParcel } from "#prisma/records/parcels";
import { parcelBody, type ShopFixture, shopFixture } from "./shop-fixture";

const by = { device: "desk", now: "2026-03-20T12:00:00.000Z" };
const MUG = { itemTypeId: "mug", pieces: 1 };
const VASES = { itemTypeId: "tall vase", pieces: 2 };
const MARCH = { from: day("2026-03-01"), to: day("2026-03-31") };

describe("parcels packed alike", () => {
  let shop: ShopFixture;
  let kinds: PackedKind[];

  const record = async (id: string, changes: Parameters<typeof parcelBody>[1]) => {
    expect(await recordParcel(shop.db, parcelBody(id, changes), by)).toMatchObject({ kind: "recorded" });
  };

  beforeAll(async () => {
    shop = await shopFixture();
    const [mug] = await itemTypesOf(shop.db);
    if (mug === undefined) throw new Error("the fixture has no item type");
    await saveItemType(shop.db, { ...mug, id: "tall vase", name: "Tall vase" });
    await record("mug-1", { packedOn: "2026-03-02" });
    await record("mug-2", { packedOn: "2026-03-09" });
    await record("mug-3", { packedOn: "2026-03-05" });
    await record("both-1", { pieces: [MUG, VASES] });
    await record("both-2", { pieces: [VASES, MUG] });
    await record("on-bubble", { style: "bubble" });
    await record("odd", { cartons: [{ supplyId: null, sizesTyped: "9 x 7 x 6" }] });
    await record("unusual", { unusual: true });
    await record("double", { cartons: [{ supplyId: "carton-8" }, { supplyId: "carton-8" }] });
    await record("voided", {});
    await voidParcel(shop.db, "voided", "typed twice", by);
    await record("before", { packedOn: "2026-02-28" });
    kinds = await packedKinds(shop.db, MARCH);
  });
  afterAll(() => shop.close());

  it("stand together by pieces, style and carton, in whatever order the pieces were named", () => {
    expect(kinds).toHaveLength(4);
    expect(kinds[0]).toEqual({
      pieces: [MUG],
      style: "paper",
      cartonId: "carton-8",
      parcels: 3,
      lastPackedOn: "2026-03-09",
    });
    expect(kinds[1]).toMatchObject({ pieces: [MUG, VASES], parcels: 2 });
    expect(kinds.filter(({ style }) => style === "bubble")).toMatchObject([{ parcels: 1 }]);
  });

  it("have no carton where it is an odd one that is in no list", () => {
    expect(kinds.filter(({ cartonId }) => cartonId === null)).toMatchObject([{ pieces: [MUG], parcels: 1 }]);
  });

  it("leave out voided ones, unusual ones, a box in a box and other days", () => {
    expect(kinds.reduce((sum, { parcels }) => sum + parcels, 0)).toBe(7);
    expect(kinds.flatMap(({ lastPackedOn }) => lastPackedOn).every((on) => on >= MARCH.from)).toBe(true);
  });

  it("have both ends of the span", async () => {
    const one = { from: day("2026-03-02"), to: day("2026-03-05") };
    expect(await packedKinds(shop.db, one)).toMatchObject([{ parcels: 2, lastPackedOn: "2026-03-05" }]);
  });
});
