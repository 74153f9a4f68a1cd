import { arrivalBy, arrivalChances, usualArrival } from "#lib/replenishment/lead-time/arrival-chances";
import { type Day, daysBetween } from "#lib/units/day";
import type { DeliveryRecord } from "#prisma/records/supplier-deliveries";
import type { Supplier } from "#prisma/records/suppliers";

/** How long one supplier really takes. */
export type LeadTimeRow = {
  readonly supplierId: string;
  readonly supplier: string;
  /** "9 days", "3 working days" */
  readonly promised: string;
  /** what of the orders that were looked at came early, on the day, late; a part of an order counts as a part */
  readonly early: number;
  readonly onDay: number;
  readonly late: number;
  /** the latest, in days after the promised day; null where none was late */
  readonly mostLate: number | null;
  /** days from an order placed today until it is here as a rule, and with 9 chances in 10 */
  readonly usualDays: number;
  readonly surelyDays: number;
  /** share of that belief that is the promise, 0 to 1 */
  readonly promiseShare: number;
};

const SURELY = 0.9;

/**
 * How long suppliers really take, by the orders placed and received.
 *
 * @param suppliers suppliers in use
 * @param deliveries how each delivers
 * @param today the day of the next order
 * @returns a row for each supplier
 */
export function leadTimeRows(
  suppliers: readonly Supplier[],
  deliveries: ReadonlyMap<string, DeliveryRecord>,
  today: Day,
): LeadTimeRow[] {
  return suppliers.flatMap((supplier): LeadTimeRow[] => {
    const delivery = deliveries.get(supplier.id);
    if (delivery === undefined) return [];
    const { terms, belief, late } = delivery;
    const arrivals = arrivalChances(today, delivery, []);
    const shareOf = (is: (days: number) => boolean) =>
      late.filter(({ days }) => is(days)).reduce((sum, { share }) => sum + share, 0);
    const most = Math.max(0, ...late.map(({ days }) => days));
    return [
      {
        supplierId: supplier.id,
        supplier: supplier.name,
        promised: promisedWords(terms.promisedDays, terms.inWorkingDays),
        early: shareOf((days) => days < 0),
        onDay: shareOf((days) => days === 0),
        late: shareOf((days) => days > 0),
        mostLate: most === 0 ? null : most,
        usualDays: daysBetween(today, usualArrival(arrivals)),
        surelyDays: daysBetween(today, arrivalBy(arrivals, SURELY)),
        promiseShare: belief.promiseShare,
      },
    ];
  });
}

function promisedWords(days: number, inWorkingDays: boolean): string {
  const unit = inWorkingDays ? "working day" : "day";
  return `${days} ${unit}${days === 1 ? "" : "s"}`;
}

/**
 * The heading of the lead times: whether deliveries keep their promise.
 *
 * @param rows a row for each supplier
 * @returns a sentence
 */
export function leadTimeFinding(rows: readonly LeadTimeRow[]): string {
  const late = rows.filter((row) => row.late > row.early + row.onDay);
  const seen = rows.filter((row) => row.early + row.onDay + row.late > 0);
  if (seen.length === 0) return "How long suppliers really take shows with the first delivery";
  if (late.length === 0) return "Deliveries mostly come when they were promised";
  return late.length === 1
    ? `${late[0]?.supplier ?? ""} mostly comes later than promised`
    : `${late.length} suppliers mostly come later than promised`;
}
