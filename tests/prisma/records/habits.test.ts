import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type Habits, USUAL_HABITS } from "#lib/packing/habits";
import { inTransaction } from "#prisma/client";
import { habitsOf, saveHabits } from "#prisma/records/habits";
import { type ShopFixture, shopFixture } from "./shop-fixture";

const own: Habits = {
  ...USUAL_HABITS,
  cushionUm: { ...USUAL_HABITS.cushionUm, usual: 38_100 },
  layers: { "small-bubble": 3, "packing-paper": 3, tissue: 1, kraft: 1, "large-bubble": 2, card: 1 },
  hollowManner: "firm",
};

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
});
afterEach(() => shop.close());

const kept = async () => (await shop.db.shop.findFirstOrThrow()).habits;
const keep = (habits: string) =>
  inTransaction(shop.db, (tx) => tx.shop.update({ where: { id: "shop" }, data: { habits } }));

describe("packing habits", () => {
  it("are common practice until the shop says otherwise", async () => {
    expect(await habitsOf(shop.db)).toEqual(USUAL_HABITS);
    await saveHabits(shop.db, USUAL_HABITS);
    expect(await kept()).toBeNull();
  });

  it("come back as saved, and only what differs is kept", async () => {
    await saveHabits(shop.db, own);
    expect(await habitsOf(shop.db)).toEqual(own);
    expect(JSON.parse((await kept()) ?? "")).toEqual({
      edition: 1,
      own: { cushionUm: { usual: 38_100 }, layers: { "small-bubble": 3, foam: null }, hollowManner: "firm" },
    });
  });

  it("give way to common practice again", async () => {
    await saveHabits(shop.db, own);
    await saveHabits(shop.db, USUAL_HABITS);
    expect(await habitsOf(shop.db)).toEqual(USUAL_HABITS);
  });

  it.each([
    ['{"edition":1,"own":{"cushionUm":{"usual":"two"}}}', /cushionUm\.usual/],
    ['{"edition":1,"own":{"hollowShare":1.5}}', /hollowShare/],
    ['{"edition":1,"own":{"stickiness":1}}', /stickiness/],
    ['{"edition":2,"own":{}}', /no text of this program/],
    ["{", /no text of this program/],
  ])("are not dropped silently where they can't be read: %s", async (text, words) => {
    await keep(text);
    await expect(habitsOf(shop.db)).rejects.toThrow(words);
  });

  it("are refused out of their range, and the kept ones stay", async () => {
    await saveHabits(shop.db, own);
    await expect(saveHabits(shop.db, { ...own, tapeFactor: 0 })).rejects.toThrow(/tapeFactor/);
    expect(await habitsOf(shop.db)).toEqual(own);
  });
});
