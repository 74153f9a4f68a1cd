import { amountOfUnits } from "#lib/units/amount";
import { recordReceipt } from "#prisma/records/receipts";
import { saveOffer, saveSupplier } from "#prisma/records/suppliers";
import { type ShopFixture, shopFixture } from "./shop-fixture";

/**
 * The fixture's shop with costs: paper was bought at 7 cents a sheet and is on offer at 8, its carton at 90 and at 110;
 * of bubble no cost is known.
 */
export async function pricedShop(): Promise<ShopFixture> {
  const shop = await shopFixture();
  await saveSupplier(shop.db, { id: "marram", name: "Marram", leadTimeDays: 4, deliveryMinor: 900 });
  const lines = [
    { supplyId: "paper", units: 400, priceMinor: 2_800 },
    { supplyId: "carton-8", units: 25, priceMinor: 2_250 },
  ];
  await recordReceipt(
    shop.db,
    {
      id: "priced",
      supplierId: "marram",
      receivedOn: "2026-01-05",
      kind: "paid",
      currency: "USD",
      rateMillionths: 1_000_000,
      taxIncluded: true,
      deliveryMinor: 0,
      taxMinor: 0,
      note: null,
      lines: lines.map(({ supplyId, units, priceMinor }) => ({
        id: `priced-${supplyId}`,
        supplyId,
        purchaseLineId: null,
        packs: 1,
        packAmount: amountOfUnits(units),
        packTyped: String(units),
        priceMinor,
      })),
    },
    { device: "desk", now: "2026-01-05T12:00:00.000Z" },
  );
  for (const [supplyId, units, priceMinor] of [
    ["paper", 100, 800],
    ["carton-8", 10, 1_100],
  ] as const) {
    await saveOffer(shop.db, {
      id: `${supplyId}-offer`,
      supplyId,
      supplierId: "marram",
      pack: String(units),
      packAmount: amountOfUnits(units),
      packTyped: String(units),
      priceMinor,
      retired: false,
      breaks: [],
    });
  }
  return shop;
}
