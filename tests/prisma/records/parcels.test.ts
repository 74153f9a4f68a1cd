import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { AMOUNT_PER_UNIT, amount } from "#lib/units/amount";
import { recordCount } from "#prisma/records/counts";
import { correctParcel, returnParcel, voidParcel } from "#prisma/records/parcel-corrections";
import { parcelOf, parcelsOf } from "#prisma/records/parcel-lists";
import { recordParcel } from "#prisma/records/parcels";
import { recordReceipt } from "#prisma/records/receipts";
import { proveRollUps, rebuildRollUps } from "#prisma/records/roll-ups";
import { stockOf } from "#prisma/records/supplies";
import { parcelBody, type ShopFixture, shopFixture } from "./shop-fixture";

const units = (n: number) => amount(n * AMOUNT_PER_UNIT);
const by = (now: string) => ({ device: "test", now });
const NOON = "2026-03-10T12:00:00.000Z";

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
});
afterEach(() => shop.close());

async function onHand(supplyId: string): Promise<number> {
  const row = (await stockOf(shop.db)).find((stock) => stock.supplyId === supplyId);
  return (row?.amount ?? 0) / AMOUNT_PER_UNIT;
}

async function count(id: string, supplyId: string, sheets: number, countedAt: string) {
  const body = {
    id,
    supplyId,
    amount: units(sheets),
    method: "number" as const,
    typed: String(sheets),
    note: null,
    countedAt,
  };
  return recordCount(shop.db, body, by(countedAt));
}

describe("recording a parcel", () => {
  it("takes its lines and its carton out of stock", async () => {
    expect(await recordParcel(shop.db, parcelBody("a"), by(NOON))).toMatchObject({ kind: "recorded" });
    expect(await onHand("paper")).toBe(-7);
    expect(await onHand("carton-8")).toBe(-1);
    expect((await proveRollUps(shop.db)).differences).toEqual([]);
  });

  it("is the same parcel under the same key and body, and a conflict under another body", async () => {
    await recordParcel(shop.db, parcelBody("a"), by(NOON));
    expect(await recordParcel(shop.db, parcelBody("a"), by(NOON))).toMatchObject({
      kind: "already-recorded",
    });
    expect(await recordParcel(shop.db, parcelBody("a", { note: "other" }), by(NOON))).toMatchObject({
      kind: "conflict",
    });
    expect(await onHand("paper")).toBe(-7);
  });

  it("writes nothing where it names something unknown", async () => {
    const body = parcelBody("a", { pieces: [{ itemTypeId: "urn", pieces: 1 }] });
    expect(await recordParcel(shop.db, body, by(NOON))).toEqual({
      kind: "unknown",
      field: "pieces.itemTypeId",
      id: "urn",
    });
    expect(await parcelsOf(shop.db, { limit: 5 })).toEqual([]);
  });

  it("warns of an order number seen before and keeps both parcels", async () => {
    await recordParcel(shop.db, parcelBody("a", { orders: [{ reference: "77" }] }), by(NOON));
    const second = await recordParcel(shop.db, parcelBody("b", { orders: [{ reference: "77" }] }), by(NOON));
    expect(second).toMatchObject({ kind: "recorded", warnings: [{ reference: "77", parcelId: "a" }] });
  });

  it("splits a parcel of two orders into shares that sum to the whole", async () => {
    const orders = [{ reference: "1" }, { reference: "2" }, { reference: "3" }];
    await recordParcel(shop.db, parcelBody("a", { orders }), by(NOON));
    const parcel = await parcelOf(shop.db, "a");
    expect(parcel?.orders.reduce((sum, order) => sum + order.share, 0)).toBe(12_000);
  });

  it("takes both cartons of a double box", async () => {
    await recordParcel(
      shop.db,
      parcelBody("a", { cartons: [{ supplyId: "carton-8" }, { supplyId: "carton-8" }] }),
      by(NOON),
    );
    expect(await onHand("carton-8")).toBe(-2);
  });

  it("asks for the order where a count fell on a backdated day", async () => {
    await count("c", "paper", 100, "2026-03-09T15:00:00.000Z");
    const late = parcelBody("a", { packedOn: "2026-03-09" });
    expect(await recordParcel(shop.db, late, by(NOON))).toEqual({
      kind: "ask-count-order",
      supplies: ["paper"],
    });
    await recordParcel(shop.db, { ...late, id: "b", countedSameDay: "before" }, by(NOON));
    expect(await onHand("paper")).toBe(100);
    await recordParcel(shop.db, { ...late, id: "c", countedSameDay: "after" }, by(NOON));
    expect(await onHand("paper")).toBe(93);
  });
});

describe("a late entry", () => {
  it("from before the latest count joins the history and leaves today's stock", async () => {
    await count("open", "paper", 200, "2026-03-01T08:00:00.000Z");
    await count("c", "paper", 150, "2026-03-09T15:00:00.000Z");
    await recordParcel(shop.db, parcelBody("a", { packedOn: "2026-03-05" }), by(NOON));
    expect(await onHand("paper")).toBe(150);
    const packed = await shop.db.supplyDay.findMany({ where: { supplyId: "paper", cause: "packed" } });
    expect(packed.map((row) => [row.day, Number(row.amount)])).toEqual([
      ["2026-03-05", -7 * AMOUNT_PER_UNIT],
    ]);
    const differences = await shop.db.supplyDay.findMany({
      where: { supplyId: "paper", cause: "count-difference" },
    });
    expect(differences.map((row) => Number(row.amount) / AMOUNT_PER_UNIT)).toEqual([-43]);
    expect((await proveRollUps(shop.db)).differences).toEqual([]);
  });

  it("voided again leaves today's stock too", async () => {
    await count("open", "paper", 200, "2026-03-01T08:00:00.000Z");
    await recordParcel(shop.db, parcelBody("a", { packedOn: "2026-03-05" }), by(NOON));
    await count("c", "paper", 150, "2026-03-10T15:00:00.000Z");
    expect(await voidParcel(shop.db, "a", "undone", by("2026-03-11T08:00:00.000Z"))).toEqual({
      kind: "voided",
    });
    expect(await onHand("paper")).toBe(150);
    expect((await proveRollUps(shop.db)).differences).toEqual([]);
  });
});

describe("correcting a parcel", () => {
  it("reverses only the lines that changed", async () => {
    await recordParcel(shop.db, parcelBody("a"), by(NOON));
    const [paper, bubble] = parcelBody("a").lines;
    if (paper === undefined || bubble === undefined) throw new Error("the fixture has two lines");
    const lines = [{ ...paper, amount: units(9), typedValue: "9" }, bubble];
    await correctParcel(shop.db, parcelBody("a", { lines }), by("2026-03-11T08:00:00.000Z"));
    const parcel = await parcelOf(shop.db, "a");
    expect(parcel?.movements.map((row) => [row.supplyId, row.amount / AMOUNT_PER_UNIT])).toEqual([
      ["paper", -7],
      ["bubble", -4],
      ["carton-8", -1],
      ["paper", 7],
      ["paper", -9],
    ]);
    expect((await proveRollUps(shop.db)).differences).toEqual([]);
  });

  it("keeps the cost that a parcel had, whatever the price does later", async () => {
    const receipt = (id: string, priceMinor: number) => ({
      id,
      supplierId: null,
      receivedOn: "2026-03-10",
      kind: "paid" as const,
      currency: "USD",
      rateMillionths: 1_000_000,
      taxIncluded: true,
      deliveryMinor: 0,
      taxMinor: 0,
      note: null,
      lines: [
        {
          id: `${id}-1`,
          supplyId: "paper",
          purchaseLineId: null,
          packs: 1,
          packAmount: units(100),
          packTyped: "100 sheets",
          priceMinor,
        },
      ],
    });
    await recordReceipt(shop.db, receipt("r1", 700), by(NOON));
    await recordParcel(
      shop.db,
      parcelBody("a", { lines: parcelBody("a").lines.slice(0, 1), cartons: [] }),
      by(NOON),
    );
    await recordReceipt(shop.db, receipt("r2", 1400), by(NOON));
    // 7 sheets at 700 minor units per 100 sheets are 49 minor units, 490,000 of 1/10,000.
    expect((await parcelOf(shop.db, "a"))?.costValue).toBe(490_000);
    await recordParcel(
      shop.db,
      parcelBody("b", { lines: parcelBody("b").lines.slice(0, 1), cartons: [] }),
      by(NOON),
    );
    // On hand 93 at 7 and 100 at 14: (651 + 1400) / 193 = 10.6269… a sheet, 7 sheets 74.3886 minor units.
    expect((await parcelOf(shop.db, "b"))?.costValue).toBe(743_886);
  });

  it("of an unusual parcel moves its use out of the averages", async () => {
    await recordParcel(shop.db, parcelBody("a"), by(NOON));
    await correctParcel(shop.db, parcelBody("a", { unusual: true }), by("2026-03-11T08:00:00.000Z"));
    const usual = await shop.db.supplyDay.findMany({ where: { supplyId: "paper", unusual: false } });
    expect(usual.map((row) => Number(row.amount))).toEqual([0]);
    expect(await onHand("paper")).toBe(-7);
    expect((await proveRollUps(shop.db)).differences).toEqual([]);
  });
});

describe("a parcel that comes back", () => {
  it("brings back what can be used again", async () => {
    await recordParcel(shop.db, parcelBody("a"), by(NOON));
    await returnParcel(
      shop.db,
      "a",
      { on: "2026-03-20", lines: [{ supplyId: "carton-8", amount: units(1) }] },
      by("2026-03-20T09:00:00.000Z"),
    );
    expect(await onHand("carton-8")).toBe(0);
    expect((await parcelOf(shop.db, "a"))?.returnedOn).toBe("2026-03-20");
  });
});

describe("roll-ups", () => {
  it("are rebuilt to the same from the ledger", async () => {
    await recordParcel(shop.db, parcelBody("a"), by(NOON));
    await voidParcel(shop.db, "a", "undone", by(NOON));
    await recordParcel(shop.db, parcelBody("b"), by(NOON));
    expect((await rebuildRollUps(shop.db)).differences).toEqual([]);
    expect((await proveRollUps(shop.db)).differences).toEqual([]);
  });
});
