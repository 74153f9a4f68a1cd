import { addDays, type Day, day } from "#lib/units/day";

const DAYS_OF_SPAN = 28;
/** Half a year and a bit: the same weekday. */
const DAYS_BACK = 182;
const MONTHS = 12;

/** Days, both included. */
export type DaySpan = { readonly from: Day; readonly to: Day };

/** The four weeks up to a day. */
export function fourWeeksTo(to: Day): DaySpan {
  return { from: addDays(to, 1 - DAYS_OF_SPAN), to };
}

/** The day to compare with where none was asked for. */
export function usualDayBefore(today: Day): Day {
  return addDays(today, -DAYS_BACK);
}

/**
 * The months of the last year, this one up to today, oldest first.
 *
 * @param today the shop's day
 * @returns twelve months with their days
 * @example lastMonths(day("2026-11-25")).at(-1) // { month: "2026-11", from: 2026-11-01, to: 2026-11-25 }
 */
export function lastMonths(today: Day): (DaySpan & { readonly month: string })[] {
  const [year = 0, month = 1] = today.split("-").map(Number);
  return Array.from({ length: MONTHS }, (_, index) => {
    const from = firstOfMonth(year, month - (MONTHS - 1) + index);
    const next = firstOfMonth(year, month - (MONTHS - 1) + index + 1);
    const last = addDays(next, -1);
    return { month: from.slice(0, 7), from, to: last > today ? today : last };
  });
}

/** The first day of a month counted on from January of a year: month 0 is December before it. */
function firstOfMonth(year: number, month: number): Day {
  const months = year * 12 + month - 1;
  const text = `${String(Math.floor(months / 12)).padStart(4, "0")}-${String((months % 12) + 1).padStart(2, "0")}-01`;
  return day(text);
}
