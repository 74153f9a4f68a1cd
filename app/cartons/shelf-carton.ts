import type { AgeingSettings } from "#lib/cartons/keeping/ageing";
import { type IdleCarton, idleCarton } from "#lib/cartons/keeping/idle-carton";
import { cartonBlank } from "#lib/packing/carton-blank";
import { economicOrderQuantity } from "#lib/replenishment/order-quantity/economic-order-quantity";
import { unitsOf } from "#lib/units/amount";
import { addDays, type Day, daysBetween, maxDay } from "#lib/units/day";
import { costValue } from "#lib/units/money";
import type { CartonDays } from "#prisma/records/carton-use-days";
import type { Stock } from "#prisma/records/supplies";
import type { SizedCarton } from "./carton-board";

const CUBIC_MICROMETRES_PER_MILLILITRE = 1e12;
const VALUE_PER_MINOR = 10_000;
const PER_MILLE = 1_000;
export const MONTHS_SHOWN = 12;
const MONTH_DAYS = 365 / MONTHS_SHOWN;
/** Flat, a carton is its blank folded once, with air between: a guess. */
const FLAT_AIR = 1.2;

/** A carton on the shelf and what is known of its use. */
export type ShelfCarton = SizedCarton & {
  readonly id: string;
  readonly name: string;
  /** null where never counted */
  readonly onHand: number | null;
  /** price of one today, else its cost in the books, 1/10,000 minor unit; null where neither is known */
  readonly value: number | null;
  readonly idle: IdleCarton;
  /** cartons used in each twelfth of the last year, oldest first; null for those before the records begin */
  readonly months: readonly (number | null)[];
};

/** What a carton is judged by. */
export type ShelfTerms = {
  readonly today: Day;
  readonly watchedFrom: Day;
  readonly useDays: CartonDays;
  readonly stock: ReadonlyMap<string, Stock>;
  readonly onOrder: ReadonlyMap<string, number>;
  readonly replacement: ReadonlyMap<string, number | null>;
  readonly ageing: AgeingSettings;
  readonly holdingPerMille: number;
  readonly orderCostMinor: number;
  readonly openDays: (from: Day, until: Day) => number;
};

/**
 * What a carton was used for, holds, and what it pays to keep of it.
 *
 * @param carton the carton with its sizes
 * @param terms the day, its use and stock, prices and how the shop judges
 */
export function shelfCarton(carton: SizedCarton, terms: ShelfTerms): ShelfCarton {
  const { supply, inside, boardUm } = carton;
  const { today, replacement, holdingPerMille } = terms;
  const stock = terms.stock.get(supply.id);
  const value = replacement.get(supply.id) ?? stock?.unitCost ?? null;
  const orderCost = costValue(terms.orderCostMinor * VALUE_PER_MINOR);
  const useDays = terms.useDays.get(supply.id) ?? [];
  const onHand = stock === undefined || stock.countedAt === null ? null : unitsOf(stock.amount);
  const rate = yearlyUse(useDays, terms);
  const idle = idleCarton(
    {
      onHand,
      onOrder: terms.onOrder.get(supply.id) ?? 0,
      useDays,
      watchedFrom: terms.watchedFrom,
      unitCost: value === null ? null : costValue(Math.round(value)),
      salvage: costValue(0),
      orderCost,
      lot: lotOf(rate, value, orderCost, holdingPerMille),
      roomMl: (cartonBlank(inside) * boardUm * FLAT_AIR) / CUBIC_MICROMETRES_PER_MILLILITRE,
    },
    { today, holdingPerMille, ageing: terms.ageing, openDays: terms.openDays },
  );
  return {
    ...carton,
    id: supply.id,
    name: supply.name,
    onHand,
    value,
    idle,
    months: monthsOf(useDays, terms),
  };
}

function yearlyUse(
  useDays: readonly { readonly day: Day; readonly cartons: number }[],
  { today, watchedFrom }: Pick<ShelfTerms, "today" | "watchedFrom">,
): number {
  const from = maxDay(watchedFrom, addDays(today, -364));
  const used = useDays.filter(({ day }) => day >= from).reduce((sum, { cartons }) => sum + cartons, 0);
  return (Math.max(0, used) * 365) / (daysBetween(from, today) + 1);
}

/** The economic quantity; where use, price or the cost of an order say nothing, one at a time. */
function lotOf(yearly: number, value: number | null, orderCost: number, holdingPerMille: number): number {
  if (yearly <= 0 || value === null || value <= 0 || orderCost <= 0) return 1;
  const holdingPerUnitYear = (value * holdingPerMille) / PER_MILLE;
  return Math.max(
    1,
    economicOrderQuantity({ yearlyUse: yearly, orderCost, holdingCost: holdingPerUnitYear }),
  );
}

function monthsOf(
  useDays: readonly { readonly day: Day; readonly cartons: number }[],
  { today, watchedFrom }: Pick<ShelfTerms, "today" | "watchedFrom">,
): (number | null)[] {
  const watchedAgo = daysBetween(watchedFrom, today);
  const months: (number | null)[] = Array.from({ length: MONTHS_SHOWN }, (_, month) =>
    (MONTHS_SHOWN - 1 - month) * MONTH_DAYS <= watchedAgo ? 0 : null,
  );
  for (const { day, cartons } of useDays) {
    const month = MONTHS_SHOWN - 1 - Math.floor(daysBetween(day, today) / MONTH_DAYS);
    const before = months[month];
    if (before !== undefined && before !== null) months[month] = before + cartons;
  }
  return months;
}
