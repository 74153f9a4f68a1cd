import { AMOUNT_PER_UNIT, amount } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { recordCount } from "#prisma/records/counts";
import { saveRecipe } from "#prisma/records/recipes";
import { type ShopFixture, shopFixture } from "../../prisma/records/shop-fixture";

const NOW = "2026-03-01T12:00:00.000Z";

/** The fixture shop with a recipe for its mug and counted paper, so that an import books lines and balances them. */
export async function countedShop(): Promise<ShopFixture> {
  const shop = await shopFixture();
  const uses = [
    { supplyId: "paper", units: 7, typedUnit: "sheet" },
    { supplyId: "bubble", units: 4, typedUnit: "sq ft" },
  ];
  const steps = uses.map(({ supplyId, units, typedUnit }, index) => ({
    id: `mug-${supplyId}`,
    position: index + 1,
    words: `Wrap in ${supplyId}`,
    supplyId,
    amount: amount(units * AMOUNT_PER_UNIT),
    typedValue: String(units),
    typedUnit,
    per: "piece" as const,
  }));
  const head = {
    id: "mug-paper",
    itemTypeId: "mug",
    style: "paper",
    effectiveFrom: day("2026-01-01"),
  } as const;
  await saveRecipe(shop.db, { ...head, commonPractice: false, note: null, steps, cartons: [] }, NOW);
  const counted = { id: "first", supplyId: "paper", amount: amount(500 * AMOUNT_PER_UNIT), typed: "500" };
  const by = { device: "desk", now: NOW };
  await recordCount(shop.db, { ...counted, method: "number", note: null }, by);
  return shop;
}
