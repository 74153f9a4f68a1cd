import { leadTimeAt, leadTimesOn, usualLeadTime } from "#lib/replenishment/simulation/lead-time-at";
import type { PlayedRun, RunFigures } from "#lib/replenishment/simulation/run-figures";
import type { ShopSetting, ShopState } from "#lib/replenishment/simulation/shop-setting";
import type { RunDraws, ShopUse } from "#lib/replenishment/simulation/shop-use";
import { type SupplierOrder, supplierOrders } from "#lib/replenishment/simulation/supplier-orders";
import { type SupplyBook, supplyBook } from "#lib/replenishment/simulation/supply-book";

/** Orders, and what the whole shop holds, so far. */
type ShopSums = {
  orders: number;
  deliveryCost: number;
  value: number;
  peakValue: number;
  litres: number;
  peakLitres: number;
  days: number;
};

/**
 * Plays one run of a shop. Each day: what is due arrives, then, on the day of a check, orders go out (a lead time of 0
 * arrives at once), then the day's use is taken, then the day is closed.
 *
 * @param use supplies and days
 * @param setting the shop and its way to order
 * @param draws what is left to chance
 * @returns figures of the run
 * @throws RangeError when the way to order breaks a supplier's terms
 */
export function playedRun(use: ShopUse, setting: ShopSetting, draws: RunDraws): PlayedRun {
  const books = new Map(setting.supplies.map((supply) => [supply.supplyId, supplyBook(supply, setting)]));
  const ordered = use.supplies.map(({ supplyId }) => bookOf(books, supplyId));
  const sums = { orders: 0, deliveryCost: 0, value: 0, peakValue: 0, litres: 0, peakLitres: 0, days: 0 };
  for (let day = 0; day < use.days; day += 1) {
    for (const book of ordered) book.receive(day);
    if (day >= setting.firstCheck && (day - setting.firstCheck) % setting.reviewDays === 0) {
      for (const order of supplierOrders(setting, setting.policy(shopState(books, day)))) {
        place(order, { books, setting, draws, sums, day });
      }
    }
    ordered.forEach((book, supply) => {
      book.use(day, draws.use[supply]?.[day] ?? 0);
    });
    if (day >= setting.countedFrom) closeDay(sums, ordered);
  }
  const supplies = new Map([...books].map(([supplyId, book]) => [supplyId, book.figures()]));
  return { supplies, shop: shopFigures(setting, supplies, sums) };
}

function place(
  order: SupplierOrder,
  {
    books,
    setting,
    draws,
    sums,
    day,
  }: {
    readonly books: ReadonlyMap<string, SupplyBook>;
    readonly setting: ShopSetting;
    readonly draws: RunDraws;
    readonly sums: ShopSums;
    readonly day: number;
  },
): void {
  const leadTimes = leadTimesOn(order.supplier, day);
  const chance = draws.leadTimeChances[setting.suppliers.indexOf(order.supplier)]?.[day] ?? 0;
  const dueDay = day + leadTimeAt(leadTimes, chance);
  const expectedDay = day + usualLeadTime(leadTimes);
  for (const { offer, packs, goods } of order.lines) {
    const book = bookOf(books, offer.supplyId);
    const share = order.goods > 0 ? goods / order.goods : 1 / order.lines.length;
    const amount = packs * offer.packAmount;
    book.order(day, { dueDay, expectedDay, amount }, { goods, delivery: share * order.delivery });
    book.receive(day);
  }
  if (day < setting.countedFrom) return;
  sums.orders += 1;
  sums.deliveryCost += order.delivery;
}

function closeDay(sums: ShopSums, books: readonly SupplyBook[]): void {
  let value = 0;
  let litres = 0;
  for (const book of books) {
    const held = book.held();
    value += held.value;
    litres += held.litres;
  }
  sums.value += value;
  sums.litres += litres;
  sums.peakValue = Math.max(sums.peakValue, value);
  sums.peakLitres = Math.max(sums.peakLitres, litres);
  sums.days += 1;
}

function shopState(books: ReadonlyMap<string, SupplyBook>, day: number): ShopState {
  return { day, supplies: new Map([...books].map(([supplyId, book]) => [supplyId, book.state()])) };
}

function shopFigures(
  setting: ShopSetting,
  supplies: ReadonlyMap<string, RunFigures>,
  sums: ShopSums,
): RunFigures {
  const total = (figure: (of: RunFigures, unitValue: number) => number): number =>
    setting.supplies.reduce((sum, { supplyId, unitValue }) => {
      const of = supplies.get(supplyId);
      return of === undefined ? sum : sum + figure(of, unitValue);
    }, 0);
  return {
    cycles: total(({ cycles }) => cycles),
    shortCycles: total(({ shortCycles }) => shortCycles),
    need: total(({ need }, unitValue) => need * unitValue),
    unmet: total(({ unmet }, unitValue) => unmet * unitValue),
    daysOutOfStock: total(({ daysOutOfStock }) => daysOutOfStock),
    orders: sums.orders,
    deliveryCost: sums.deliveryCost,
    goodsCost: total(({ goodsCost }) => goodsCost),
    ordered: total(({ ordered }, unitValue) => ordered * unitValue),
    meanValue: sums.value / sums.days,
    peakValue: sums.peakValue,
    meanLitres: sums.litres / sums.days,
    peakLitres: sums.peakLitres,
    endValue: total(({ endValue }) => endValue),
    meanOwedValue: total(({ meanOwedValue }) => meanOwedValue),
  };
}

function bookOf(books: ReadonlyMap<string, SupplyBook>, supplyId: string): SupplyBook {
  const book = books.get(supplyId);
  if (book === undefined) throw new RangeError(`playedRun requires the stock of ${supplyId}, got none`);
  return book;
}
