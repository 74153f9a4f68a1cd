import type { CheckRow } from "#lib/replenishment/check-row";
import { type Day, daysBetween } from "#lib/units/day";
import { formatDay, formatDayLong } from "#lib/units/day-text";

const LONGEST = 90;
type FindingRow = Pick<CheckRow, "supply" | "action" | "orderByDate" | "arrivals">;

/**
 * Finding: the one line that says what to do this week.
 *
 * @param rows rows of the check, most urgent first
 * @param today the day of the check
 * @returns a sentence of at most 90 characters where the names allow it
 * @example finding([], day("2026-11-25")) // "No supplies yet: copy the recipes of what you sell, theirs come along."
 */
export function finding(rows: readonly FindingRow[], today: Day): string {
  if (rows.length === 0) {
    return "No supplies yet: copy the recipes of what you sell, theirs come along.";
  }
  const todayRows = rows.filter((row) => row.action === "order-today");
  const weekRows = rows.filter((row) => row.action === "order-this-week");
  const uncounted = rows.filter((row) => row.action === "count").length;
  const late = rows.filter((row) => row.arrivals.some((arrival) => arrival.expectedOn < today));
  if (todayRows.length === 0 && weekRows.length === 0) {
    return nothingToOrder(rows, uncounted, late);
  }
  const others = rows.length - todayRows.length - weekRows.length;
  const rest = restWords({ others, uncounted, late: late.length });
  const withNames = `Order ${orderWords(todayRows, weekRows, { today, names: true })}${rest}`;
  return withNames.length <= LONGEST
    ? withNames
    : `Order ${orderWords(todayRows, weekRows, { today, names: false })}${rest}`;
}

type WordsTerms = { readonly today: Day; readonly names: boolean };

function orderWords(
  todayRows: readonly FindingRow[],
  weekRows: readonly FindingRow[],
  { today, names }: WordsTerms,
): string {
  const parts: string[] = [];
  if (todayRows.length > 0) {
    parts.push(`${suppliesWords(todayRows, names)} today`);
  }
  // Ordered together by the first of their days, all are in time.
  const [firstDay] = weekRows.flatMap((row) => (row.orderByDate === null ? [] : [row.orderByDate])).sort();
  if (firstDay !== undefined) {
    const supplies =
      todayRows.length > 0 && !names && weekRows.length > 1
        ? `${weekRows.length} more`
        : suppliesWords(weekRows, names);
    parts.push(`${supplies} by ${byWords(firstDay, today)}`);
  }
  return parts.join(" and ");
}

function suppliesWords(rows: readonly FindingRow[], names: boolean): string {
  const [first, second] = rows;
  if (names && rows.length === 1 && first !== undefined) {
    return first.supply;
  }
  if (names && rows.length === 2 && first !== undefined && second !== undefined) {
    return `${first.supply} and ${second.supply}`;
  }
  return rows.length === 1 ? "one supply" : `${rows.length} supplies`;
}

/** Within a week the weekday alone says which day is meant. */
function byWords(of: Day, today: Day): string {
  const [weekdayName = ""] = formatDayLong(of).split(" ");
  return daysBetween(today, of) < 7 ? weekdayName : formatDay(of, { weekday: true });
}

function restWords(rest: { readonly others: number; readonly uncounted: number; readonly late: number }) {
  const asks = [
    ...(rest.uncounted === 0
      ? []
      : [`count ${rest.uncounted === 1 ? "one more" : `${rest.uncounted} more`}`]),
    ...(rest.late === 0 ? [] : [lateWords(rest.late)]),
  ];
  if (asks.length > 0) {
    return `; ${asks.join(" and ")}${rest.late === 0 ? " to be sure" : ""}.`;
  }
  return rest.others > 0 ? "; the rest can wait." : ".";
}

function lateWords(late: number): string {
  return `ask after ${late === 1 ? "a late delivery" : `${late} late deliveries`}`;
}

function nothingToOrder(rows: readonly FindingRow[], uncounted: number, late: readonly FindingRow[]): string {
  if (uncounted === rows.length) {
    return "Count the shelf first: no supply has a date yet.";
  }
  if (rows.every((row) => row.action === "count" || row.action === "no-use")) {
    return uncounted === 0
      ? "No use is recorded: the next parcels will say how long the shelf lasts."
      : `Record parcels to see how long the shelf lasts, and count ${uncounted === 1 ? "one" : uncounted} more.`;
  }
  if (uncounted > 0) {
    const toCount = `count ${uncounted === 1 ? "one supply" : uncounted}`;
    const end = late.length > 0 ? `${toCount} and ${lateWords(late.length)}` : `${toCount} to be sure`;
    return `Nothing known must be ordered this week; ${end}.`;
  }
  const nothing = "Nothing to order this week";
  const ends = late.length > 0 ? [lateNames(late), lateWords(late.length)] : nextWords(rows);
  const text = ends.map((end) => `${nothing}; ${end}.`).find((each) => each.length <= LONGEST);
  return text ?? `${nothing}.`;
}

function lateNames(late: readonly FindingRow[]): string {
  const [first] = late;
  const due = first?.arrivals[0]?.expectedOn;
  return late.length === 1 && first !== undefined && due !== undefined
    ? `ask where ${first.supply} is, due ${formatDay(due)}`
    : lateWords(late.length);
}

function nextWords(rows: readonly FindingRow[]): string[] {
  const next = rows.find((row) => row.action === "order-later");
  return next === undefined || next.orderByDate === null
    ? []
    : [`next is ${next.supply} by ${formatDay(next.orderByDate, { weekday: true })}`];
}
