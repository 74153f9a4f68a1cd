import type { ShopSetting, ShopSupplier } from "#lib/replenishment/simulation/shop-setting";
import type { ShopUse, UseSource } from "#lib/replenishment/simulation/shop-use";
import { day } from "#lib/units/day";

/** A Monday. */
export const FIRST_DAY = day("2026-11-23");

/** A shop of one supply, "a", that is sold singly; 1 minor unit and 2 litres each, delivery 10. */
export function oneSupplyShop(
  leadTimes: ShopSupplier["leadTimes"],
  changes: Partial<ShopSetting> & Pick<ShopSetting, "policy">,
): ShopSetting {
  return {
    supplies: [{ supplyId: "a", startStock: 0, arrivals: [], unitValue: 1, litresPerUnit: 2 }],
    suppliers: [{ supplierId: "s", leadTimes, delivery: { charge: 10, freeFrom: null }, leastValue: null }],
    offers: [
      {
        offerId: "single",
        supplyId: "a",
        supplierId: "s",
        packAmount: 1,
        prices: { steps: [{ from: 0, price: 1 }], pricing: "all-units" },
      },
    ],
    reviewDays: 1,
    firstCheck: 0,
    unmet: "met-later",
    countedFrom: 0,
    ...changes,
  };
}

/** Use of the one supply. */
export function oneSupplyUse(source: UseSource, days: number): ShopUse {
  return { firstDay: FIRST_DAY, days, calendar: [], supplies: [{ supplyId: "a", source }] };
}
