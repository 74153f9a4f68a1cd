import { z } from "zod";
import { type Day, isDay } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";

/** Days in a row, both ends included. */
export type DaySpan = { readonly fromDay: Day; readonly toDay: Day };

const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
/** A year with a 29 February, so that it can be read. */
const LEAP_YEAR = "2028";

/** Days on which a supplier is closed, a span in each line: "2026-12-24 to 2027-01-02", or one day. */
export const closuresTyped = z.string().transform((text, context): DaySpan[] => {
  const lines = text.split(/[\n;,]+/).filter((line) => line.trim() !== "");
  const spans = lines.map(spanOf);
  const wrong = spans.indexOf(null);
  const found = spans.filter((span) => span !== null).toSorted((a, b) => (a.fromDay < b.fromDay ? -1 : 1));
  const overlap = found.find((span, index) => (found[index + 1]?.fromDay ?? "~") <= span.toDay);
  if (wrong === -1 && overlap === undefined) return found;
  context.addIssue({
    code: "custom",
    message:
      wrong === -1
        ? `The days from ${overlap?.fromDay} to ${overlap?.toDay} overlap the next ones. Write each day once.`
        : `“${lines[wrong]?.trim()}” can’t be read. Write 2026-12-24 to 2027-01-02, one span a line, the first day first.`,
  });
  return z.NEVER;
});

function spanOf(line: string): DaySpan | null {
  const [from = "", to = from, ...more] = line.trim().split(/\s*(?:\bto\b|–|—|\.\.)\s*|\s+-\s+/);
  return more.length === 0 && isDay(from) && isDay(to) && from <= to ? { fromDay: from, toDay: to } : null;
}

/** Spans as they are typed. */
export function closuresAsTyped(
  spans: readonly { readonly fromDay: string; readonly toDay: string }[],
): string {
  return spans
    .map((span) => (span.fromDay === span.toDay ? span.fromDay : `${span.fromDay} to ${span.toDay}`))
    .join("\n");
}

/** A day of every year: "1 Sep", "Sep 1" or 09-01; kept as "09-01". */
export const monthDayTyped = z.string().transform((text, context): string => {
  const [first = "", second = ""] = text
    .trim()
    .toLowerCase()
    .replace(".", "")
    .split(/[\s/-]+/);
  const month = monthOf(first) ?? monthOf(second);
  const isNamed = month !== null;
  const dayText = monthOf(first) === null ? first : second;
  const read = isNamed
    ? `${two(month)}-${two(Number(dayText))}`
    : `${two(Number(first))}-${two(Number(second))}`;
  if (isDay(`${LEAP_YEAR}-${read}`)) return read;
  context.addIssue({
    code: "custom",
    message: `“${text}” can’t be read. Write a day like 1 Sep, or 09-01: month, then day.`,
  });
  return z.NEVER;
});

function monthOf(word: string): number | null {
  const index = word.length < 3 ? -1 : MONTHS.indexOf(word.slice(0, 3));
  return index === -1 ? null : index + 1;
}

function two(number: number): string {
  return String(number).padStart(2, "0");
}

/**
 * A day of every year in words.
 *
 * @param monthDay "09-01"
 * @returns "1 Sep"
 * @example monthDayWords("09-01") // "1 Sep"
 */
export function monthDayWords(monthDay: string): string {
  const leap = `${LEAP_YEAR}-${monthDay}`;
  return isDay(leap) ? formatDay(leap) : monthDay;
}
