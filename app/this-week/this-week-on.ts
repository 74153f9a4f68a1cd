import { closedCalendar } from "#lib/forecast/open-days";
import type { PlanAim } from "#lib/purchasing/plan/plan-question";
import type { NotPlanned } from "#lib/purchasing/week-plan/week-plan-input";
import { arrivalChances, usualArrival } from "#lib/replenishment/lead-time/arrival-chances";
import type { WeeklyCheck } from "#lib/replenishment/weekly-check";
import { addDays, type Day, weekStart } from "#lib/units/day";
import { formatMoney } from "#lib/units/money";
import type { Database } from "#prisma/client";
import { parcelsPacked } from "#prisma/records/parcels-packed";
import { pricesPaid } from "#prisma/records/prices-paid";
import { type OpenPurchaseLine, openPurchaseLines } from "#prisma/records/purchases";
import { lastSaidCheck, type SaidCheck } from "#prisma/records/said-checks";
import type { Shop } from "#prisma/records/shop";
import { offersOf, suppliersOf } from "#prisma/records/suppliers";
import { planDrafts } from "../purchase-plan/plan-drafts";
import { readWeekPlan } from "../purchase-plan/read-week-plan";
import type { WantedPlan } from "../purchase-plan/wanted-plan";
import { type PeakRow, peakRows } from "./peak-rows";
import { type PriceRow, priceRows } from "./price-rows";
import { type PurchaseDraft, purchaseDrafts } from "./purchase-draft";

/** All that the screen says about a day. */
export type ThisWeekFacts = {
  readonly check: WeeklyCheck;
  readonly plan: WantedPlan;
  readonly notPlanned: readonly NotPlanned[];
  /** by the plan where there is one, else as each supply alone would have them */
  readonly drafts: readonly PurchaseDraft[];
  readonly openLines: readonly OpenPurchaseLine[];
  readonly parcelsLastWeek: number;
  readonly supplierNames: ReadonlyMap<string, string>;
  readonly lastCheck: SaidCheck | null;
  readonly peak: readonly PeakRow[];
  readonly prices: readonly PriceRow[];
};

/**
 * Reads the weekly check of a day and what belongs to it.
 *
 * @param db - the database
 * @param shop - the shop as set up
 * @param week - the day of the check, and what the plan is wanted for
 * @returns the check, the orders to place, what is on its way, and the parcels of the week before
 * @throws Error when the shop was removed meanwhile
 */
export async function thisWeekOn(
  db: Database,
  shop: Shop,
  { today, aim }: { readonly today: Day; readonly aim: PlanAim },
): Promise<ThisWeekFacts> {
  const thisWeek = weekStart(today, shop.weekStartsOn);
  const [
    { check, inputs, terms, plan, notPlanned },
    offers,
    suppliers,
    openLines,
    parcelsLastWeek,
    lastCheck,
    paid,
  ] = await Promise.all([
    readWeekPlan(db, { today, aim }),
    offersOf(db),
    suppliersOf(db),
    openPurchaseLines(db),
    parcelsPacked(db, addDays(thisWeek, -7), addDays(thisWeek, -1)),
    lastSaidCheck(db, today),
    pricesPaid(db),
  ]);
  const alone = purchaseDrafts(check.rows, offers, suppliers);
  const names = new Map(check.rows.map((row) => [row.supplyId, row.supply]));
  const calendar = closedCalendar(terms.closed);
  const arrivals = new Map(
    inputs.flatMap((input) =>
      input.offers.map(({ offerId, delivery }) => [
        offerId,
        usualArrival(arrivalChances(today, delivery, calendar)),
      ]),
    ),
  );
  const made = plan.kind === "ready" ? planOrNearest(plan) : null;
  return {
    check,
    plan,
    notPlanned,
    drafts:
      made === null
        ? alone
        : planDrafts(made, {
            today,
            rows: check.rows,
            offers,
            suppliers,
            alone,
            inMoney: (minor) => formatMoney(minor, shop.currency, shop.minorDigits),
            nameOf: (supplyId) => names.get(supplyId) ?? supplyId,
            arrivalOf: (offerId) => arrivals.get(offerId) ?? today,
          }),
    openLines,
    parcelsLastWeek,
    supplierNames: new Map(suppliers.map((supplier) => [supplier.id, supplier.name])),
    lastCheck,
    peak: peakRows(check, inputs, terms),
    prices: priceRows(paid, today),
  };
}

/** Where limits block the plan, the best that they allow. */
function planOrNearest({ answer }: Extract<WantedPlan, { kind: "ready" }>) {
  return answer.kind === "plan" ? answer.plan : answer.nearest;
}
