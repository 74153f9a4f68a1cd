import { type ClosedCalendar, lastOpenDay, nextOpenDay } from "#lib/forecast/open-days";
import type { SupplyForecast } from "#lib/forecast/shop/subject-forecast";
import type { ShopWeek } from "#lib/forecast/shop-weeks";
import { expectedUse } from "#lib/forecast/use-path";
import { type WeekUse, weeklyUse } from "#lib/forecast/weekly-use";
import { bestOffer, offerPacks, type PackedOffer } from "#lib/replenishment/best-offer";
import { bookError } from "#lib/replenishment/book-error";
import { checkAction } from "#lib/replenishment/check-action";
import type { CheckAction, CheckRow } from "#lib/replenishment/check-row";
import { explanation } from "#lib/replenishment/explanation";
import { forecastWords } from "#lib/replenishment/forecast-words";
import { guess } from "#lib/replenishment/guess";
import { arrivalChances, usualArrival } from "#lib/replenishment/lead-time/arrival-chances";
import { plainTerms } from "#lib/replenishment/lead-time/delivery-terms";
import { latenessBelief } from "#lib/replenishment/lead-time/lateness-belief";
import type { SupplierDelivery } from "#lib/replenishment/lead-time/supplier-delivery";
import { chanceUntilDelivery, orderBy } from "#lib/replenishment/order-by";
import { type ProtectionPlan, protectionPlan } from "#lib/replenishment/protection-plan";
import { carefulRunOut, likelyRunOut, type RunOut, type RunOutQuestion } from "#lib/replenishment/run-out";
import { type RowWithoutSentence, sentence } from "#lib/replenishment/sentence";
import { stockPosition } from "#lib/replenishment/stock-position";
import { suggestedPacks } from "#lib/replenishment/suggested-packs";
import type { ShopTerms, SupplyOutlookInput } from "#lib/replenishment/supply-outlook-input";
import { AMOUNT_PER_UNIT, amount, sumAmounts } from "#lib/units/amount";
import { addDays, type Day, daysBetween, maxDay, minDay } from "#lib/units/day";

/** Taken where no offer says how long a delivery takes; common practice, no source. */
const ASSUMED_LEAD_TIME_DAYS = 7;
const DAYS_A_WEEK = 7;
/** Records of fewer weeks may simply not have met a supply yet. */
const WEEKS_WITHOUT_USE = 26;

/** What all supplies of one check have in common. */
export type CheckFrame = {
  readonly terms: ShopTerms;
  readonly today: Day;
  readonly calendar: ClosedCalendar;
  /** the shop's weeks that are over, oldest first */
  readonly weeks: readonly ShopWeek[];
};

/**
 * Outlook of one supply: how much is used, how long it lasts, by when to order and how much.
 *
 * @param input what the records know; rows after today are not looked at
 * @param frame the shop's terms, today, its closed days and weeks
 * @returns the row of the weekly check
 * @throws RangeError when use is not given oldest first or a term is out of range
 */
export function supplyOutlook(input: SupplyOutlookInput, frame: CheckFrame): CheckRow {
  const useByDay = input.useByDay.filter((use) => use.day <= frame.today);
  const weeks = weeklyUse(useByDay, frame.weeks);
  return input.forecast === null
    ? rowWithoutUse(input, frame, weeks)
    : rowWithUse(input, frame, { forecast: input.forecast, weeks });
}

function rowWithoutUse(input: SupplyOutlookInput, frame: CheckFrame, weeks: readonly WeekUse[]): CheckRow {
  const { today, terms, calendar } = frame;
  const best = bestOffer(input.offers.map((offer) => ({ offer, packs: 1 })));
  const delivery = best?.offer.delivery ?? assumedDelivery(today);
  const arrivalDate = usualArrival(arrivalChances(today, delivery, calendar));
  const nextCheck = nextOpenDay(addDays(today, terms.reviewDays), calendar);
  const protectedUntil = usualArrival(arrivalChances(nextCheck, delivery, calendar));
  const recordedDays = input.firstDay === null ? 0 : daysBetween(input.firstDay, today);
  const isNew = recordedDays < DAYS_A_WEEK * WEEKS_WITHOUT_USE;
  const mustCount = input.onHand === null ? isNew : input.onHand < 0;
  const row: RowWithoutSentence = {
    ...plainParts(input),
    position: null,
    bookError: null,
    usePerWeek: null,
    method: "No use in 26 weeks",
    weeks,
    protectionDays: daysBetween(today, protectedUntil),
    leadTimeDays: daysBetween(today, arrivalDate),
    expectedUse: null,
    errorDeviation: null,
    safetyStock: null,
    reorderPoint: null,
    daysOfCover: null,
    ...UNKNOWN_DAYS,
    arrivalDate,
    offerId: best?.offer.offerId ?? null,
    suggestedPacks: null,
    packsByOffer: [],
    action: mustCount ? "count" : "no-use",
    guess: null,
  };
  return { ...row, sentence: sentence(row, today), explanation: [] };
}

function rowWithUse(
  input: SupplyOutlookInput,
  frame: CheckFrame,
  { forecast, weeks }: { readonly forecast: SupplyForecast; readonly weeks: readonly WeekUse[] },
): CheckRow {
  const { today } = frame;
  const planFor = planBySupplier(forecast, input, frame);
  const packed = input.offers.map((offer) => packedOffer(input, planFor(offer.delivery), { offer, frame }));
  const best = bestOffer(packed);
  const plan = planFor(best?.offer.delivery ?? assumedDelivery(today));
  const isKnown = input.onHand !== null && input.onHand >= 0;
  const outlook = isKnown ? stockOutlook(input, plan, frame) : { ...UNKNOWN_DAYS, action: "count" as const };
  const isToOrder = outlook.action.startsWith("order");
  const row: RowWithoutSentence = {
    ...plainParts(input),
    position: isKnown ? stockPosition(input.onHand, input.onOrder, plan.interval.until) : null,
    bookError: isKnown ? bookError(input, forecast.correction, today) : null,
    usePerWeek: plan.usePerWeek,
    method: forecastWords(forecast),
    weeks,
    protectionDays: plan.interval.days,
    leadTimeDays: plan.leadTimeDays,
    expectedUse: plan.expectedUse,
    errorDeviation: plan.deviation,
    safetyStock: plan.safetyStock,
    reorderPoint: plan.reorderPoint,
    daysOfCover: isKnown ? Math.floor(((input.onHand ?? 0) * DAYS_A_WEEK) / plan.usePerWeek) : null,
    ...outlook,
    arrivalDate: usualArrival(plan.arrivals),
    offerId: best?.offer.offerId ?? null,
    suggestedPacks: best !== null && isKnown ? atLeast(isToOrder ? 1 : 0, best.packs) : null,
    packsByOffer: isKnown
      ? packed.map(({ offer, packs }) => offerPacks({ offer, packs: atLeast(isToOrder ? 1 : 0, packs) }))
      : [],
    guess: guess(plan, best !== null),
  };
  const lines = explanation({
    unit: input.unit,
    plan,
    weeks,
    correction: forecast.correction,
    onHand: input.onHand,
    countedOn: input.countedOn,
    onOrder: row.onOrder,
    position: stockPosition(input.onHand, input.onOrder, plan.interval.until),
    today,
    supplierName: best?.offer.supplierName ?? null,
  });
  return { ...row, sentence: sentence(row, today), explanation: lines };
}

const UNKNOWN_DAYS = {
  oddsToday: null,
  oddsNextCheck: null,
  carefulRunOutDate: null,
  runOutDate: null,
  shortFrom: null,
  orderByDate: null,
};

function plainParts(input: SupplyOutlookInput) {
  return {
    supplyId: input.supplyId,
    supply: input.name,
    unit: input.unit,
    onHand: input.onHand,
    onOrder: sumAmounts(input.onOrder.map((arrival) => arrival.amount)),
    countedOn: input.countedOn,
    arrivals: input.onOrder.toSorted((a, b) => (a.expectedOn < b.expectedOn ? -1 : 1)),
  };
}

/** Where no supplier is known: a usual promise, and no delivery that says how it is kept. */
function assumedDelivery(today: Day): SupplierDelivery {
  return {
    terms: plainTerms(ASSUMED_LEAD_TIME_DAYS),
    belief: latenessBelief([], { promisedDays: ASSUMED_LEAD_TIME_DAYS, orderedOn: today }),
  };
}

/** Offers of one supplier share their plan. */
function planBySupplier(
  forecast: SupplyForecast,
  input: SupplyOutlookInput,
  frame: CheckFrame,
): (delivery: SupplierDelivery) => ProtectionPlan {
  const plans = new Map<SupplierDelivery, ProtectionPlan>();
  const { today, calendar, terms } = frame;
  const { reviewDays, coverWeeks } = terms;
  return (delivery) => {
    const goal = input.goal ?? terms.goal;
    const plan =
      plans.get(delivery) ??
      protectionPlan({ forecast, today, delivery, reviewDays, goal, coverWeeks, calendar });
    plans.set(delivery, plan);
    return plan;
  };
}

function packedOffer(
  input: SupplyOutlookInput,
  plan: ProtectionPlan,
  { offer, frame }: { readonly offer: PackedOffer["offer"]; readonly frame: CheckFrame },
): PackedOffer {
  const { until: from } = plan.interval;
  const until = addDays(from, frame.terms.coverWeeks * DAYS_A_WEEK);
  const covered = expectedUse(plan.forecast.path, { from, until }, frame.calendar);
  const target = amount(plan.reorderPoint + Math.round(covered * AMOUNT_PER_UNIT));
  const onOrder = sumAmounts(input.onOrder.map((arrival) => arrival.amount));
  const position = amount(Math.max(0, input.onHand ?? 0) + onOrder);
  return { offer, packs: suggestedPacks(position, target, offer.packAmount) };
}

function stockOutlook(
  input: SupplyOutlookInput,
  plan: ProtectionPlan,
  { today, calendar }: CheckFrame,
): Pick<CheckRow, keyof typeof UNKNOWN_DAYS> & { action: CheckAction } {
  const onHand = input.onHand ?? amount(0);
  const question: RunOutQuestion = {
    today,
    stock: onHand,
    arrivals: input.onOrder,
    countedUntil: plan.interval.until,
    forecast: plan.forecast,
    calendar,
  };
  const careful = carefulRunOut(question, plan.level);
  const position = stockPosition(onHand, input.onOrder, plan.interval.until) ?? 0;
  // What lasts for ten years is not ordered, even where next to nothing is kept.
  const isDue = position <= plan.reorderPoint && careful.day !== null;
  const orderByDate = orderByFor(plan, { question, careful, isDue });
  const odds = (orderedOn: Day): number =>
    1 -
    chanceUntilDelivery(orderedOn, {
      ...question,
      runOut: careful,
      delivery: plan.delivery,
      level: plan.level,
    });
  return {
    oddsToday: odds(today),
    oddsNextCheck: odds(plan.nextCheck),
    carefulRunOutDate: careful.day,
    runOutDate: likelyRunOut(question).day,
    shortFrom: shortFrom(question),
    orderByDate,
    action: checkAction({
      today,
      isDue,
      isDueWithoutArrivals: onHand <= plan.reorderPoint && careful.day !== null,
      orderByDate,
    }),
  };
}

/**
 * The last day on which an order keeps the promise. The promise is one of many order cycles: at the reorder point
 * the order goes out before the next check, above it not before.
 */
function orderByFor(
  plan: ProtectionPlan,
  of: { readonly question: RunOutQuestion; readonly careful: RunOut; readonly isDue: boolean },
): Day | null {
  const { today, calendar } = of.question;
  const last = orderBy({ ...of.question, delivery: plan.delivery, runOut: of.careful, level: plan.level });
  if (!of.isDue) return last === null ? null : maxDay(last, plan.nextCheck);
  const beforeNextCheck = maxDay(today, lastOpenDay(addDays(plan.nextCheck, -1), calendar));
  return last === null ? beforeNextCheck : minDay(last, beforeNextCheck);
}

/** The day stock ends although something on order comes later. What is late comes tomorrow at the soonest. */
function shortFrom(question: RunOutQuestion): Day | null {
  const { today } = question;
  const arrivals = question.arrivals.map((arrival) => ({
    amount: arrival.amount,
    expectedOn: arrival.expectedOn < today ? addDays(today, 1) : arrival.expectedOn,
  }));
  const end = likelyRunOut({ ...question, arrivals, countedUntil: today }).day;
  return end !== null && arrivals.some((arrival) => arrival.expectedOn > maxDay(end, today)) ? end : null;
}

function atLeast(least: number, packs: number): number {
  return Math.max(least, packs);
}
