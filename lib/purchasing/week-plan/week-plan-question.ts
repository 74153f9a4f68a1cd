import { type ClosedCalendar, closedCalendar } from "#lib/forecast/open-days";
import { expectedUse } from "#lib/forecast/use-path";
import type { PlanOffer } from "#lib/purchasing/plan/plan-offer";
import type { PlanAim, PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { PlanSupplier } from "#lib/purchasing/plan/plan-supplier";
import type { PlanSupply } from "#lib/purchasing/plan/plan-supply";
import type { NotPlanned, PlanningSupply, WeekPlanInput } from "#lib/purchasing/week-plan/week-plan-input";
import { arrivalChances, usualArrival } from "#lib/replenishment/lead-time/arrival-chances";
import { stockPosition } from "#lib/replenishment/stock-position";
import type { CheckOffer } from "#lib/replenishment/suggested-packs";
import { unitsOf } from "#lib/units/amount";
import { addDays, type Day, daysBetween, minDay } from "#lib/units/day";

/** Weeks that the plan looks ahead. */
export const PLAN_WEEKS = 13;
const DAYS_A_WEEK = 7;
const WEEKS_A_YEAR = 52;
const ML_PER_LITRE = 1_000;
const PER_MILLE = 1_000;
/** Use of so many days sets a week's reorder point against today's; a guess, no source. */
const COMPARED_DAYS = 14;
/** At the reorder point an order is due, so the position must stand above it; in use units. */
const ABOVE_THE_POINT = 0.01;
/** To be short by this share of a week's use costs as much as two deliveries: the promise goes before the saving; guesses. */
const SHORT_SHARE = 0.05;
const SHORT_DELIVERIES = 2;
/** And at least as many times its own price; a guess. */
const SHORT_PRICES = 5;

/** The question, and which supplies are not in it. */
export type WeekPlan = { readonly question: PlanQuestion; readonly notPlanned: readonly NotPlanned[] };

/**
 * This week's question to the joint purchase plan. It is put in stock positions, on hand and on order together, as the
 * weekly check decides: at each check the position must stand above the reorder point, so the position left at the end
 * of a week must reach the next reorder point less that week's use. An order counts in the position at once; one that
 * takes weeks longer than the best offer's supplier counts those weeks later.
 *
 * @param input the weekly check, suppliers and limits
 * @param aim what the plan is wanted for
 * @returns the question in weeks from today, and the supplies that are left out
 */
export function weekPlanQuestion(input: WeekPlanInput, aim: PlanAim): WeekPlan {
  const calendar = closedCalendar(input.terms.closed);
  const notPlanned: NotPlanned[] = [];
  const planned: { supply: PlanSupply; offers: PlanOffer[]; onItsWayLitres: number }[] = [];
  for (const supply of input.supplies) {
    const why = whyNotPlanned(supply);
    if (why === null) planned.push(plannedSupply(supply, input, calendar));
    else notPlanned.push({ supplyId: supply.row.supplyId, why });
  }
  const room = input.limits.roomMl === null ? null : input.limits.roomMl / ML_PER_LITRE;
  const isPlanned = new Set(planned.map(({ supply }) => supply.id));
  const onItsWay = planned.reduce((sum, each) => sum + each.onItsWayLitres, 0);
  const question: PlanQuestion = {
    weeks: PLAN_WEEKS,
    supplies: planned.map(({ supply }) => supply),
    suppliers: input.suppliers.map((each) => planSupplier(each, input)),
    offers: planned.flatMap(({ offers }) => offers),
    substitutes: input.substitutes.filter(
      ({ fromSupplyId, toSupplyId }) => isPlanned.has(fromSupplyId) && isPlanned.has(toSupplyId),
    ),
    limits: { cash: cashLimits(input.limits.weekLimitMinor), litres: room === null ? null : room + onItsWay },
    aim,
    keepsWanted: true,
  };
  return { question, notPlanned };
}

function whyNotPlanned({ row, input }: PlanningSupply): NotPlanned["why"] | null {
  if (input.forecast === null || row.reorderPoint === null) return "no-use";
  if (row.onHand === null || row.onHand < 0) return "not-counted";
  if (input.offers.length === 0) return "no-offer";
  return input.offers.every((offer) => offer.priceMinor === null) ? "no-price" : null;
}

function plannedSupply(supply: PlanningSupply, input: WeekPlanInput, calendar: ClosedCalendar) {
  const { today, limits } = input;
  const { row } = supply;
  const needBetween = usesOf(supply, calendar);
  const use = weeksFrom(today, needBetween);
  const points = reorderPoints(supply, today, needBetween);
  const priced = supply.input.offers.filter((offer) => offer.priceMinor !== null);
  const unitMinor = Math.min(...priced.map(leastUnitPrice));
  const litres = Math.min(...priced.map(litresPerUnit));
  const coverDays = Math.min(limits.longestCoverWeeks * DAYS_A_WEEK, supply.shelfLifeDays ?? Infinity);
  const smallest = Math.min(...priced.map((offer) => unitsOf(offer.packAmount)));
  const until = addDays(today, row.protectionDays);
  const weekly = Math.max(...use, 0);
  const isEnding = supply.lastUseOn !== null && supply.lastUseOn < addDays(today, PLAN_WEEKS * DAYS_A_WEEK);
  const of: PlanSupply = {
    id: row.supplyId,
    stock: unitsOf(stockPosition(row.onHand, row.arrivals, until) ?? row.onOrder),
    arrivals: laterArrivals(supply, until),
    use,
    wanted: points.map((point, week) => Math.max(0, point + ABOVE_THE_POINT - (use[week] ?? 0))),
    most: points.map((point, week) => {
      const from = addDays(today, week * DAYS_A_WEEK);
      const covered = needBetween(from, addDays(from, coverDays + row.leadTimeDays));
      return Math.max(covered, point + smallest);
    }),
    endValueMinor: isEnding ? 0 : unitMinor,
    shortMinor: Math.max(SHORT_PRICES * unitMinor, shortOfDelivery(input, weekly)),
    holdingMinor: (unitMinor * limits.holdingPerMille) / PER_MILLE / WEEKS_A_YEAR,
    litres,
  };
  return {
    supply: of,
    offers: priced.map((offer) => planOffer(offer, supply, { today, calendar })),
    onItsWayLitres: litres * needBetween(today, addDays(today, row.leadTimeDays)),
  };
}

type NeedBetween = (from: Day, until: Day) => number;

/** Expected use between two days; none after the last day of use. */
function usesOf({ input, lastUseOn }: PlanningSupply, calendar: ClosedCalendar): NeedBetween {
  const path = input.forecast?.path;
  return (from, until) => {
    const end = lastUseOn === null ? until : minDay(until, addDays(lastUseOn, 1));
    return path === undefined || end <= from ? 0 : expectedUse(path, { from, until: end }, calendar);
  };
}

function weeksFrom(today: Day, of: (from: Day, until: Day) => number): number[] {
  return Array.from({ length: PLAN_WEEKS }, (_, week) =>
    of(addDays(today, week * DAYS_A_WEEK), addDays(today, (week + 1) * DAYS_A_WEEK)),
  );
}

/** Today's reorder point, and in later weeks as much more or less as is used then. */
function reorderPoints({ row }: PlanningSupply, today: Day, needBetween: NeedBetween): number[] {
  const point = row.reorderPoint === null ? 0 : unitsOf(row.reorderPoint);
  const now = needBetween(today, addDays(today, COMPARED_DAYS));
  return Array.from({ length: PLAN_WEEKS }, (_, week) => {
    const from = addDays(today, week * DAYS_A_WEEK);
    const then = needBetween(from, addDays(from, COMPARED_DAYS));
    if (now > 0) return (point * then) / now;
    return week === 0 || then > 0 ? point : 0;
  });
}

/** What is on order for after the protection interval, by the week in which the position counts it. */
function laterArrivals({ row }: PlanningSupply, until: Day): number[] {
  const weeks = new Array<number>(PLAN_WEEKS).fill(0);
  for (const { expectedOn, amount } of row.arrivals) {
    if (expectedOn <= until) continue;
    const week = Math.ceil(daysBetween(until, expectedOn) / DAYS_A_WEEK);
    if (week < PLAN_WEEKS) weeks[week] = (weeks[week] ?? 0) + unitsOf(amount);
  }
  return weeks;
}

function planOffer(
  offer: CheckOffer,
  { row }: PlanningSupply,
  { today, calendar }: { readonly today: Day; readonly calendar: ClosedCalendar },
): PlanOffer {
  const days = daysBetween(today, usualArrival(arrivalChances(today, offer.delivery, calendar)));
  const first = offer.priceMinor === null ? [] : [{ fromPacks: 1, priceMinor: offer.priceMinor }];
  return {
    id: offer.offerId,
    supplyId: row.supplyId,
    supplierId: offer.supplierId,
    unitsPerPack: unitsOf(offer.packAmount),
    steps: [...first, ...offer.breaks.filter(({ fromPacks }) => fromPacks > 1)],
    kind: offer.breakKind,
    leadWeeks: Math.max(0, Math.ceil((days - row.leadTimeDays) / DAYS_A_WEEK)),
    mostPacks: offer.mostPacksAMonth ?? null,
  };
}

function planSupplier(
  of: WeekPlanInput["suppliers"][number],
  { terms, limits }: WeekPlanInput,
): PlanSupplier {
  return {
    id: of.supplierId,
    deliveryMinor: of.deliveryMinor,
    freeFromMinor: of.freeFromMinor,
    leastOrderMinor: of.leastOrderMinor,
    orderWeeks: Array.from(
      { length: PLAN_WEEKS },
      (_, week) =>
        Math.floor((week * DAYS_A_WEEK) / terms.reviewDays) !==
        Math.floor(((week - 1) * DAYS_A_WEEK) / terms.reviewDays),
    ),
    handlingMinor: limits.orderCostMinor,
  };
}

/** A limit for each week, as the sum that may be spent up to it. */
function cashLimits(weekLimitMinor: number | null): PlanQuestion["limits"]["cash"] {
  if (weekLimitMinor === null) return [];
  return Array.from({ length: PLAN_WEEKS }, (_, week) => ({
    throughWeek: week,
    minor: weekLimitMinor * (week + 1),
  }));
}

function leastUnitPrice({ priceMinor, breaks, packAmount }: CheckOffer): number {
  const prices = [priceMinor ?? Infinity, ...breaks.map((step) => step.priceMinor)];
  return Math.min(...prices) / unitsOf(packAmount);
}

function litresPerUnit({ volumeMl, packAmount }: CheckOffer): number {
  return volumeMl === null ? 0 : volumeMl / ML_PER_LITRE / unitsOf(packAmount);
}

function shortOfDelivery({ suppliers }: WeekPlanInput, weeklyUse: number): number {
  const dearest = Math.max(0, ...suppliers.map((each) => each.deliveryMinor));
  return weeklyUse <= 0 ? 0 : (SHORT_DELIVERIES * dearest) / (SHORT_SHARE * weeklyUse);
}
