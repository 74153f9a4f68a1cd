import type { CheckOffer } from "#lib/replenishment/suggested-packs";
import type { SupplyOutlookInput } from "#lib/replenishment/supply-outlook-input";
import type { TrialShop } from "#lib/replenishment/trial/trial-shop";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { onTime } from "../on-time";
import { supplyForecast } from "../supply-forecast";

/** A Monday. */
export const TODAY = day("2026-11-23");

/** An invented offer: a pack of 10 for 5.00, there 3 days after its order. */
export function trialOffer(changes: Partial<CheckOffer> = {}): CheckOffer {
  return {
    offerId: "ten",
    supplierId: "s",
    supplierName: "Supplier",
    delivery: onTime(3),
    pack: "pack of 10",
    packAmount: amountOfUnits(10),
    priceMinor: 500,
    breaks: [],
    breakKind: "all-units",
    volumeMl: null,
    ...changes,
  };
}

/** An invented supply: 14 a week for certain, 20 on the shelf, nothing on order. */
export function trialSupply(changes: Partial<SupplyOutlookInput> = {}): SupplyOutlookInput {
  return {
    supplyId: "a",
    name: "Tissue",
    unit: "sheet",
    onHand: amountOfUnits(20),
    countedOn: TODAY,
    onOrder: [],
    useByDay: [],
    firstDay: null,
    forecast: supplyForecast(14),
    goal: null,
    offers: [trialOffer()],
    ...changes,
  };
}

/** An invented shop that is never closed; delivery costs 8.00, an order 1.00 of work, a year of keeping 36.5 %. */
export function trialShop(changes: Partial<TrialShop> = {}): TrialShop {
  return {
    today: TODAY,
    calendar: [],
    supplies: [trialSupply()],
    suppliers: [{ supplierId: "s", delivery: { charge: 800, freeFrom: null }, leastValue: null }],
    holdingShare: 0.365,
    orderCost: 100,
    ...changes,
  };
}
