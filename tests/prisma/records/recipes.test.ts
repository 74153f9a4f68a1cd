import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { day } from "#lib/units/day";
import { itemTypesOf } from "#prisma/records/item-types";
import { recordParcel } from "#prisma/records/parcels";
import { recipesOf, saveRecipe } from "#prisma/records/recipes";
import { fillStep, mugCard, sheetsParcel } from "./counted-shop";
import { type ShopFixture, shopFixture } from "./shop-fixture";

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
});
afterEach(() => shop.close());

const DAY = day("2026-03-03");
const NOW = `${DAY}T12:00:00.000Z`;
const BARE = { massMg: 412_000, massTyped: "412 g" };
const mug = async () => (await itemTypesOf(shop.db)).find(({ id }) => id === "mug");
const card = (id: string, sheets: number) =>
  mugCard(id, [fillStep(`fill-${id}`, sheets)], { effectiveFrom: DAY });

describe("a card that is saved with the weight of its bare piece", () => {
  it("keeps both", async () => {
    expect(await saveRecipe(shop.db, card("first", 11), NOW, BARE)).toEqual({ kind: "saved" });
    expect(await mug()).toMatchObject(BARE);
    expect(await recipesOf(shop.db)).toMatchObject([{ id: "first", steps: [{ id: "fill-first" }] }]);
  });

  it("keeps neither where parcels hold to the card of that day", async () => {
    await saveRecipe(shop.db, card("first", 11), NOW);
    const line = { recipeStepId: "fill-first", supplyId: "paper" };
    const [of] = sheetsParcel("parcel", 11, { packedOn: DAY }).lines;
    const lines = of === undefined ? [] : [{ ...of, ...line }];
    await recordParcel(shop.db, sheetsParcel("parcel", 11, { packedOn: DAY, lines }), {
      device: "desk",
      now: NOW,
    });
    expect(await saveRecipe(shop.db, card("second", 12), NOW, BARE)).toMatchObject({ kind: "in-use" });
    expect(await mug()).toMatchObject({ massMg: null, massTyped: null });
    expect(await recipesOf(shop.db)).toMatchObject([{ id: "first" }]);
  });

  it("leaves the weight alone where none was typed with the card", async () => {
    await saveRecipe(shop.db, card("first", 11), NOW, BARE);
    await saveRecipe(shop.db, card("second", 12), NOW);
    expect(await mug()).toMatchObject(BARE);
  });
});
