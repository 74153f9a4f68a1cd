import type { CheckRow } from "#lib/replenishment/check-row";
import { type Day, daysBetween } from "#lib/units/day";
import { formatDay, formatDayLong } from "#lib/units/day-text";

const LONGEST = 90;
type FindingRow = Pick<CheckRow, "supply" | "action" | "orderByDate">;

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
  if (todayRows.length === 0 && weekRows.length === 0) {
    return nothingToOrder(rows, uncounted);
  }
  const rest = restWords(rows.length - todayRows.length - weekRows.length, uncounted);
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

function restWords(others: number, uncounted: number): string {
  if (uncounted > 0) {
    return `; count ${uncounted === 1 ? "one more" : `${uncounted} more`} to be sure.`;
  }
  return others > 0 ? "; the rest can wait." : ".";
}

function nothingToOrder(rows: readonly FindingRow[], uncounted: number): string {
  if (uncounted === rows.length) {
    return "Count the shelf first: no supply has a date yet.";
  }
  if (rows.every((row) => row.action === "count" || row.action === "no-use")) {
    return uncounted === 0
      ? "No use is recorded: the next parcels will say how long the shelf lasts."
      : `Record parcels to see how long the shelf lasts, and count ${uncounted === 1 ? "one" : uncounted} more.`;
  }
  if (uncounted > 0) {
    const known = "Nothing known must be ordered this week";
    return uncounted === 1
      ? `${known}; count one supply to be sure.`
      : `${known}; count ${uncounted} to be sure.`;
  }
  const next = rows.find((row) => row.action === "order-later");
  const text =
    next === undefined || next.orderByDate === null
      ? "Nothing to order this week."
      : `Nothing to order this week; next is ${next.supply} by ${formatDay(next.orderByDate, { weekday: true })}.`;
  return text.length <= LONGEST ? text : "Nothing to order this week.";
}
