import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { WeekPlanInput } from "#lib/purchasing/week-plan/week-plan-input";
import { weekPlanQuestion } from "#lib/purchasing/week-plan/week-plan-question";
import { type ShopTerms, type SupplyOutlookInput, weeklyCheck } from "#lib/replenishment/weekly-check";
import { AMOUNT_PER_UNIT, amount, sumAmounts, unitsOf } from "#lib/units/amount";
import { addDays, type Day } from "#lib/units/day";
import type { Database } from "#prisma/client";
import { shopOf } from "#prisma/records/shop";
import { weekPlanInput } from "#prisma/records/week-plan-inputs";
import { checkInputs } from "#prisma/records/weekly-checks";

export const DAYS_A_WEEK = 7;

/** A week's decision: which offers, how many packs. */
export type WeekOrders = readonly { readonly offerId: string; readonly packs: number }[];

/** What a week knows when it decides; the stock is that of the played shop. */
export type PlayedWeek = {
  readonly week: number;
  readonly question: PlanQuestion;
  readonly input: WeekPlanInput;
};

/** What a shop really used, and what it would have known each week. */
export type YearToPlay = {
  readonly firstDay: Day;
  readonly weeks: number;
  readonly known: readonly { readonly inputs: readonly SupplyOutlookInput[]; readonly terms: ShopTerms }[];
  /** use of each day by supply, use units */
  readonly used: ReadonlyMap<string, readonly number[]>;
  readonly planInput: (week: number, inputs: readonly SupplyOutlookInput[]) => Promise<WeekPlanInput>;
};

/** What a way of ordering did in a year. */
export type PlayedYear = {
  readonly goodsMinor: number;
  readonly deliveryMinor: number;
  readonly holdingMinor: number;
  /** worth of what is left, on hand and on order */
  readonly leftMinor: number;
  /** share of the need filled from stock */
  readonly filled: number;
  readonly orders: number;
  /** the question of each week as this way met it */
  readonly questions: readonly PlanQuestion[];
  /** position at the start, by supply, use units */
  readonly start: ReadonlyMap<string, number>;
};

/**
 * Reads what a shop used in a span of weeks, and what it would have known at the start of each.
 *
 * @param db a loaded database
 * @param firstDay the first check
 * @param weeks how many
 */
export async function yearToPlay(db: Database, firstDay: Day, weeks: number): Promise<YearToPlay> {
  const shop = await shopOf(db);
  if (shop === null) throw new RangeError("yearToPlay requires a shop, got none");
  const days = weeks * DAYS_A_WEEK;
  const rows = await db.supplyDay.findMany({
    where: {
      day: { gte: firstDay, lt: addDays(firstDay, days) },
      cause: { in: ["packed", "spoilt", "returned"] },
    },
  });
  const place = new Map(Array.from({ length: days }, (_, at) => [addDays(firstDay, at) as string, at]));
  const used = new Map<string, number[]>();
  for (const row of rows) {
    const own = used.get(row.supplyId) ?? new Array<number>(days).fill(0);
    const at = place.get(row.day) ?? 0;
    own[at] = (own[at] ?? 0) - Number(row.amount) / AMOUNT_PER_UNIT;
    used.set(row.supplyId, own);
  }
  const known: { inputs: readonly SupplyOutlookInput[]; terms: ShopTerms }[] = [];
  for (let week = 0; week < weeks; week += 1) {
    const found = await checkInputs(db, addDays(firstDay, week * DAYS_A_WEEK));
    if (found === null) throw new RangeError("yearToPlay requires a shop, got none");
    known.push(found);
  }
  return {
    firstDay,
    weeks,
    known,
    used,
    planInput: async (week, inputs) => {
      const today = addDays(firstDay, week * DAYS_A_WEEK);
      const terms = known[week]?.terms;
      if (terms === undefined) throw new RangeError(`yearToPlay has no week ${week}`);
      return weekPlanInput(db, shop, { today, inputs, terms, check: weeklyCheck(inputs, terms, today) });
    },
  };
}

type Due = { readonly day: number; readonly supplyId: string; readonly units: number };

/**
 * Plays a year: at each check the way of ordering sees the played stock and what was known then; orders come on the
 * promised day; what is used beyond the stock is lost. Keeping stock costs its yearly share of the least price.
 *
 * @param year what was used and known
 * @param decide the way of ordering
 */
export async function playedYear(
  year: YearToPlay,
  decide: (week: PlayedWeek) => Promise<WeekOrders>,
): Promise<PlayedYear> {
  const stock = new Map<string, number>();
  const start = new Map<string, number>();
  const questions: PlanQuestion[] = [];
  let due: Due[] = [];
  const sums = { goods: 0, delivery: 0, holding: 0, orders: 0, used: 0, missed: 0 };
  for (let week = 0; week < year.weeks; week += 1) {
    const inputs = played(year, week, stock, due);
    const input = await year.planInput(week, inputs);
    const { question } = weekPlanQuestion(input, { kind: "cheapest" });
    questions.push(question);
    for (const supply of question.supplies) if (!start.has(supply.id)) start.set(supply.id, supply.stock);
    const lines = await decide({ week, question, input });
    const paid = costOf(question, lines);
    sums.goods += paid.goods;
    sums.delivery += paid.delivery;
    sums.orders += paid.orders;
    due = [...due, ...dueOf(input, lines, week)];
    for (let at = week * DAYS_A_WEEK; at < (week + 1) * DAYS_A_WEEK; at += 1) {
      due = arrived(due, at, stock);
      const day = playedDay(question, { stock, needOf: (id) => year.used.get(id)?.[at] ?? 0 });
      sums.used += day.used;
      sums.missed += day.missed;
      sums.holding += day.holding;
    }
  }
  const last = questions.at(-1);
  if (last === undefined) throw new RangeError("playedYear requires a week, got none");
  const left = last.supplies.reduce((sum, { id, endValueMinor }) => {
    const coming = due.filter(({ supplyId }) => supplyId === id).reduce((all, { units }) => all + units, 0);
    return sum + ((stock.get(id) ?? 0) + coming) * endValueMinor;
  }, 0);
  return {
    goodsMinor: sums.goods,
    deliveryMinor: sums.delivery,
    holdingMinor: sums.holding,
    leftMinor: left,
    filled: 1 - sums.missed / sums.used,
    orders: sums.orders,
    questions,
    start,
  };
}

/** Books what has come by a day; gives what is still on its way. */
function arrived(due: readonly Due[], at: number, stock: Map<string, number>): Due[] {
  for (const each of due.filter(({ day }) => day <= at)) {
    stock.set(each.supplyId, (stock.get(each.supplyId) ?? 0) + each.units);
  }
  return due.filter(({ day }) => day > at);
}

/** Uses a day's need as far as the stock goes; what comes back goes to the shelf. Worth used and missed, cost of keeping. */
function playedDay(
  question: PlanQuestion,
  { stock, needOf }: { readonly stock: Map<string, number>; readonly needOf: (id: string) => number },
): { used: number; missed: number; holding: number } {
  const sums = { used: 0, missed: 0, holding: 0 };
  for (const { id, holdingMinor } of question.supplies) {
    const need = needOf(id);
    const held = stock.get(id) ?? 0;
    const taken = Math.min(held, need);
    stock.set(id, held - taken);
    sums.used += weighed(question, id, Math.max(0, need));
    sums.missed += weighed(question, id, need - taken);
    sums.holding += ((held - taken) * holdingMinor) / DAYS_A_WEEK;
  }
  return sums;
}

/** A sheet and a carton cannot be added up; their worth can. */
function weighed({ supplies }: PlanQuestion, id: string, units: number): number {
  return units * (supplies.find((supply) => supply.id === id)?.endValueMinor ?? 0);
}

/** What the week would have known, with the played stock in place of the recorded one. */
function played(
  year: YearToPlay,
  week: number,
  stock: Map<string, number>,
  due: readonly Due[],
): SupplyOutlookInput[] {
  const known = year.known[week];
  if (known === undefined) throw new RangeError(`played has no week ${week}`);
  const today = addDays(year.firstDay, week * DAYS_A_WEEK);
  return known.inputs.map((input) => {
    const held = stock.get(input.supplyId) ?? firstStock(input);
    stock.set(input.supplyId, held);
    const onOrder = due
      .filter(({ supplyId }) => supplyId === input.supplyId)
      .map(({ day, units }) => ({
        amount: amount(Math.round(units * AMOUNT_PER_UNIT)),
        expectedOn: addDays(year.firstDay, day),
      }));
    return { ...input, onHand: amount(Math.round(held * AMOUNT_PER_UNIT)), countedOn: today, onOrder };
  });
}

/** The shop starts with what it had. */
function firstStock({ onHand, onOrder }: SupplyOutlookInput): number {
  return Math.max(0, unitsOf(onHand ?? amount(0)) + unitsOf(sumAmounts(onOrder.map((each) => each.amount))));
}

function costOf(question: PlanQuestion, lines: WeekOrders) {
  const goods = new Map<string, number>();
  for (const { offerId, packs } of lines) {
    const offer = question.offers.find(({ id }) => id === offerId);
    if (offer === undefined || packs === 0) continue;
    const price = offer.steps?.findLast(({ fromPacks }) => fromPacks <= packs)?.priceMinor ?? 0;
    goods.set(offer.supplierId, (goods.get(offer.supplierId) ?? 0) + price * packs);
  }
  const delivery = [...goods].reduce((sum, [supplierId, value]) => {
    const supplier = question.suppliers.find(({ id }) => id === supplierId);
    const isFree = supplier?.freeFromMinor !== null && value >= (supplier?.freeFromMinor ?? 0);
    return sum + (isFree ? 0 : (supplier?.deliveryMinor ?? 0));
  }, 0);
  const total = [...goods.values()].reduce((sum, value) => sum + value, 0);
  return { goods: total, delivery, orders: goods.size };
}

function dueOf(input: WeekPlanInput, lines: WeekOrders, week: number): Due[] {
  return input.supplies.flatMap((supply) =>
    supply.input.offers.flatMap((offer): Due[] => {
      const packs = lines.find(({ offerId }) => offerId === offer.offerId)?.packs ?? 0;
      if (packs === 0) return [];
      const day = week * DAYS_A_WEEK + offer.delivery.terms.promisedDays;
      return [{ day, supplyId: supply.row.supplyId, units: packs * unitsOf(offer.packAmount) }];
    }),
  );
}
