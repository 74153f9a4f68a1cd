import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { AMOUNT_PER_UNIT, amount } from "#lib/units/amount";
import {
  retireSubstitute,
  type Substitute,
  saveSubstitute,
  substitutesOf,
} from "#prisma/records/substitutes";
import { saveSupply, suppliesOf } from "#prisma/records/supplies";
import { type ShopFixture, shopFixture } from "./shop-fixture";

const bubbleForPaper: Substitute = {
  id: "bubble-for-paper",
  supplyId: "paper",
  standInId: "bubble",
  job: "fill",
  amount: amount(2 * AMOUNT_PER_UNIT),
  insteadOf: amount(3 * AMOUNT_PER_UNIT),
  note: "the carton may bulge",
};

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
});
afterEach(() => shop.close());

describe("the shop's own stand-ins", () => {
  it("come back in the order in which they were made", async () => {
    const other: Substitute = { ...bubbleForPaper, id: "a", job: "shock", note: null };
    await saveSubstitute(shop.db, bubbleForPaper);
    await saveSubstitute(shop.db, other);
    expect(await substitutesOf(shop.db)).toEqual([bubbleForPaper, other]);
  });

  it("are one for the same supplies and job", async () => {
    await saveSubstitute(shop.db, bubbleForPaper);
    const changed = { ...bubbleForPaper, id: "another", amount: amount(AMOUNT_PER_UNIT) };
    await saveSubstitute(shop.db, changed);
    expect(await substitutesOf(shop.db)).toEqual([{ ...changed, id: bubbleForPaper.id }]);
  });

  it("leave when they are taken off, or one of their supplies is", async () => {
    await saveSubstitute(shop.db, bubbleForPaper);
    await retireSubstitute(shop.db, bubbleForPaper.id);
    expect(await substitutesOf(shop.db)).toEqual([]);
    await saveSubstitute(shop.db, bubbleForPaper);
    const bubble = (await suppliesOf(shop.db)).find(({ id }) => id === "bubble");
    if (bubble === undefined) throw new TypeError("the fixture has bubble");
    await saveSupply(shop.db, { ...bubble, retired: true });
    expect(await substitutesOf(shop.db)).toEqual([]);
  });
});
