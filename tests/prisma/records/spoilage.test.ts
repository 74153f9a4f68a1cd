import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { AMOUNT_PER_UNIT, amount } from "#lib/units/amount";
import { recordCount } from "#prisma/records/counts";
import { movementsOf, newestLine as newestLineOf, reverseMovement } from "#prisma/records/movements";
import { recordSpoilage, type Spoilage, takeBackSpoilage } from "#prisma/records/spoilage";
import { stockOf } from "#prisma/records/supplies";
import { type ShopFixture, shopFixture } from "./shop-fixture";

const units = (n: number) => amount(n * AMOUNT_PER_UNIT);
const by = { device: "test", now: "2026-03-10T12:00:00.000Z" };

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
});
afterEach(() => shop.close());

function torn(changes: Partial<Spoilage> = {}): Spoilage {
  return {
    supplyId: "paper",
    amount: units(4),
    typedValue: "4",
    typedUnit: "sheets",
    words: "torn",
    on: "2026-03-10",
    ...changes,
  };
}

/** The key of a form that is shown now. */
function newestLine(): Promise<number> {
  return newestLineOf(shop.db);
}

async function paperInStock(): Promise<number | undefined> {
  return (await stockOf(shop.db)).find((row) => row.supplyId === "paper")?.amount;
}

describe("a spoilage", () => {
  it("is booked once however often its form is sent", async () => {
    const sent = torn({ shownAfter: await newestLine() });
    expect(await recordSpoilage(shop.db, sent, by)).toMatchObject({ kind: "spoilt" });
    expect(await recordSpoilage(shop.db, sent, by)).toMatchObject({ kind: "already-spoilt" });
    expect(await paperInStock()).toBe(units(-4));
  });

  it("is booked once when two sendings of its form arrive together", async () => {
    const sent = torn({ shownAfter: await newestLine() });
    const both = await Promise.all([recordSpoilage(shop.db, sent, by), recordSpoilage(shop.db, sent, by)]);
    expect(both.map((outcome) => outcome.kind).sort()).toEqual(["already-spoilt", "spoilt"]);
    expect(await paperInStock()).toBe(units(-4));
  });

  it("that is alike is booked again from a form that was shown anew", async () => {
    await recordSpoilage(shop.db, torn({ shownAfter: await newestLine() }), by);
    const again = torn({ shownAfter: await newestLine() });
    expect(await recordSpoilage(shop.db, again, by)).toMatchObject({ kind: "spoilt" });
    expect(await paperInStock()).toBe(units(-8));
  });

  it("with other figures from the same form is held back until the form was shown anew", async () => {
    const key = await newestLine();
    await recordSpoilage(shop.db, torn({ shownAfter: key }), by);
    const other = torn({ amount: units(5), typedValue: "5", shownAfter: key });
    expect(await recordSpoilage(shop.db, other, by)).toMatchObject({ kind: "spoilt-since" });
    expect(await paperInStock()).toBe(units(-4));
    const shownAnew = { ...other, shownAfter: await newestLine() };
    expect(await recordSpoilage(shop.db, shownAnew, by)).toMatchObject({ kind: "spoilt" });
    expect(await paperInStock()).toBe(units(-9));
  });

  it("stays booked once even when it was taken back before its form was sent again", async () => {
    const sent = torn({ shownAfter: await newestLine() });
    await recordSpoilage(shop.db, sent, by);
    await reverseMovement(shop.db, await newestLine(), "not torn", by);
    expect(await recordSpoilage(shop.db, sent, by)).toMatchObject({ kind: "already-spoilt" });
    expect(await paperInStock()).toBe(0);
  });

  it("is not held back by a count, another supply's loss or one taken back since the form was shown", async () => {
    await recordSpoilage(shop.db, torn(), by);
    const spoilt = await newestLine();
    const sent = torn({ shownAfter: spoilt });
    await reverseMovement(shop.db, spoilt, "not torn", by);
    await recordSpoilage(shop.db, torn({ supplyId: "bubble" }), by);
    await recordCount(
      shop.db,
      { id: "c", supplyId: "paper", amount: units(50), method: "number", typed: "50", note: null },
      { ...by, now: "2026-03-10T12:01:00.000Z" },
    );
    const later = { ...by, now: "2026-03-10T12:02:00.000Z" };
    expect(await recordSpoilage(shop.db, sent, later)).toMatchObject({ kind: "spoilt" });
    expect(await paperInStock()).toBe(units(46));
  });

  it("names its line, and that of the loss that holds it back", async () => {
    const key = await newestLine();
    const booked = { movementId: expect.any(Number) };
    const first = await recordSpoilage(shop.db, torn({ shownAfter: key }), by);
    expect(first).toMatchObject(booked);
    expect(first).toMatchObject({ movementId: await newestLine() });
    const other = await recordSpoilage(shop.db, torn({ amount: units(1) }), by);
    const held = await recordSpoilage(shop.db, torn({ amount: units(9), shownAfter: key }), by);
    expect(held).toEqual({ kind: "spoilt-since", movementId: "movementId" in other && other.movementId });
    const again = await recordSpoilage(shop.db, torn({ shownAfter: key }), by);
    expect(again).toEqual({ kind: "already-spoilt", movementId: "movementId" in first && first.movementId });
  });

  it("that fell before the newest count names its own line, not the one that balances it", async () => {
    await recordCount(
      shop.db,
      { id: "c", supplyId: "paper", amount: units(50), method: "number", typed: "50", note: null },
      by,
    );
    const late = await recordSpoilage(shop.db, torn({ on: "2026-03-09" }), by);
    const lines = await movementsOf(shop.db, "paper", { limit: 2 });
    const loss = lines.find(({ cause }) => cause === "spoilt");
    expect(lines).toHaveLength(2);
    expect(late).toEqual({ kind: "spoilt", movementId: loss?.id });
  });

  it("is taken back once by its line, and a line that is no loss is not", async () => {
    await recordCount(
      shop.db,
      { id: "c", supplyId: "paper", amount: units(50), method: "number", typed: "50", note: null },
      by,
    );
    const count = await newestLine();
    const later = { ...by, now: "2026-03-10T12:01:00.000Z" };
    await recordSpoilage(shop.db, torn(), later);
    const loss = await newestLine();
    expect(await paperInStock()).toBe(units(46));
    expect(await takeBackSpoilage(shop.db, count, later)).toEqual({ kind: "not-found" });
    expect(await takeBackSpoilage(shop.db, loss, later)).toEqual({ kind: "reversed" });
    expect(await takeBackSpoilage(shop.db, loss, later)).toEqual({ kind: "already-reversed" });
    expect(await takeBackSpoilage(shop.db, await newestLine(), later)).toEqual({ kind: "not-found" });
    expect(await paperInStock()).toBe(units(50));
  });

  it("of a supply that is not there says so", async () => {
    expect(await recordSpoilage(shop.db, torn({ supplyId: "gone" }), by)).toEqual({
      kind: "unknown",
      field: "supplyId",
      id: "gone",
    });
  });
});
