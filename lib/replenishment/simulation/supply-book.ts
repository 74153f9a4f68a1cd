import type { RunFigures } from "#lib/replenishment/simulation/run-figures";
import type { ShopSetting, ShopSupply, SupplyState } from "#lib/replenishment/simulation/shop-setting";

/** Rounding is no shortage. */
const NOTHING = 1e-9;

type Coming = { readonly dueDay: number; readonly expectedDay: number; readonly amount: number };

/** One supply in one run: its stock, what is coming, and its figures so far. */
export type SupplyBook = {
  /** what arrives by the start of a day */
  readonly receive: (day: number) => void;
  readonly order: (
    day: number,
    coming: Coming,
    cost: { readonly goods: number; readonly delivery: number },
  ) => void;
  /** takes a day's use and closes the day */
  readonly use: (day: number, amount: number) => void;
  readonly state: () => SupplyState;
  /** value and litres in stock now */
  readonly held: () => { readonly value: number; readonly litres: number };
  readonly figures: () => RunFigures;
};

/**
 * Opens the book of a supply.
 *
 * @param supply how the shop begins with it
 * @param terms what happens to use that is not met, and from which day figures are kept
 * @returns the book; what it is told must come in order of day
 * @example supplyBook(supply, { unmet: "met-later", countedFrom: 0 })
 */
export function supplyBook(
  supply: ShopSupply,
  terms: Pick<ShopSetting, "unmet" | "countedFrom">,
): SupplyBook {
  const { unitValue, litresPerUnit } = supply;
  // Below 0: what is owed.
  let stock = supply.startStock;
  let coming: Coming[] = supply.arrivals.map((arrival) => ({ ...arrival, expectedDay: arrival.dueDay }));
  let isCycleKept = terms.countedFrom === 0;
  let isCycleShort = false;
  const sums = {
    cycles: 0,
    shortCycles: 0,
    need: 0,
    unmet: 0,
    daysOutOfStock: 0,
    orders: 0,
    deliveryCost: 0,
    goodsCost: 0,
    ordered: 0,
    held: 0,
    most: 0,
    owed: 0,
    days: 0,
  };

  function closeCycle(day: number): void {
    if (isCycleKept) {
      sums.cycles += 1;
      if (isCycleShort) sums.shortCycles += 1;
    }
    isCycleKept = day >= terms.countedFrom;
    isCycleShort = false;
  }

  function receive(day: number): void {
    if (!coming.some(({ dueDay }) => dueDay <= day)) return;
    closeCycle(day);
    for (const { dueDay, amount } of coming) if (dueDay <= day) stock += amount;
    coming = coming.filter(({ dueDay }) => dueDay > day);
  }

  function use(day: number, amount: number): void {
    const owedBefore = Math.max(0, -stock);
    stock -= amount;
    const unmet = Math.max(0, -stock) - owedBefore;
    if (terms.unmet === "substitute") stock = Math.max(0, stock);
    if (unmet > NOTHING) isCycleShort = true;
    if (day < terms.countedFrom) return;
    sums.days += 1;
    sums.need += amount;
    sums.unmet += unmet;
    if (unmet > NOTHING) sums.daysOutOfStock += 1;
    sums.held += Math.max(0, stock);
    sums.most = Math.max(sums.most, stock);
    sums.owed += Math.max(0, -stock);
  }

  return {
    receive,
    use,
    order(day, next, cost) {
      coming.push(next);
      if (day < terms.countedFrom) return;
      sums.orders += 1;
      sums.goodsCost += cost.goods;
      sums.ordered += next.amount;
      sums.deliveryCost += cost.delivery;
    },
    state() {
      const onHand = Math.max(0, stock);
      const owed = Math.max(0, -stock);
      const position = coming.reduce((sum, { amount }) => sum + amount, stock);
      return {
        onHand,
        owed,
        onOrder: coming.map(({ expectedDay, amount }) => ({ expectedDay, amount })),
        position,
      };
    },
    held() {
      const onHand = Math.max(0, stock);
      return { value: onHand * unitValue, litres: onHand * litresPerUnit };
    },
    figures() {
      const { held, most, owed, days, ...counted } = sums;
      return {
        ...counted,
        meanValue: (held / days) * unitValue,
        peakValue: most * unitValue,
        meanLitres: (held / days) * litresPerUnit,
        peakLitres: most * litresPerUnit,
        endValue: Math.max(0, stock) * unitValue,
        meanOwedValue: (owed / days) * unitValue,
      };
    },
  };
}
