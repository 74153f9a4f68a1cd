import type { CheckRow } from "#lib/replenishment/check-row";
import type { Arrival } from "#lib/replenishment/run-out";
import { type Amount, sumAmounts } from "#lib/units/amount";
import { formatAmount, formatEstimate } from "#lib/units/amount-text";
import { type Day, daysBetween } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import type { UseUnit } from "#lib/units/use-unit";

/** A row before its sentence is written. */
export type RowWithoutSentence = Omit<CheckRow, "sentence" | "explanation">;

/** Days so far ahead are written with their year. */
const YEAR_FROM_DAYS = 300;

/**
 * Sentence of a row: what to do and by when, in plain words and the row's own unit.
 *
 * @param row what the check found
 * @param today the day of the check
 * @returns one to three short sentences
 * @example sentence(row, day("2026-11-25")) // "Lasts until 7 Dec; order by Fri 27 Nov."
 */
export function sentence(row: RowWithoutSentence, today: Day): string {
  switch (row.action) {
    case "count":
      return countSentence(row);
    case "no-use":
      return noUseSentence(row);
    case "order-today":
      return joined([todaySentence(row, today), arrivalsCounted(row, today)]);
    case "order-this-week":
      return joined([orderBySentence(row, today), shortSentence(row, today) || arrivalsCounted(row, today)]);
    case "order-later":
      return joined([orderBySentence(row, today), shortSentence(row, today)]);
    case "on-its-way":
      return onItsWaySentence(row, today);
    case "enough":
      return joined([enoughSentence(row, today), shortSentence(row, today)]);
    default:
      return row.action satisfies never;
  }
}

function countSentence(row: RowWithoutSentence): string {
  const use = row.usePerWeek === null ? "No use recorded yet." : usedSentence(row.usePerWeek, row.unit);
  return row.onHand === null
    ? `Never counted: count this to get a date. ${use}`
    : `The book says ${formatAmount(row.onHand, row.unit)}: count this to get a date. ${use}`;
}

function usedSentence(perWeek: Amount, unit: UseUnit): string {
  const text = formatEstimate(perWeek, unit);
  return `About ${text} a week ${unit !== "each" && text.startsWith("1 ") ? "is" : "are"} used.`;
}

function noUseSentence(row: RowWithoutSentence): string {
  const onHand = row.onHand === null ? "" : ` ${formatAmount(row.onHand, row.unit)} on hand.`;
  const used = row.weeks.some((week) => week.amount > 0);
  const due = row.arrivals.length === 0 ? "" : ` ${dueWords(row.arrivals, row.unit)}.`;
  return `${used ? "Not used in 26 weeks." : "No use recorded yet."}${onHand}${due}`;
}

function todaySentence(row: RowWithoutSentence, today: Day): string {
  const comes = dayWords(row.arrivalDate, today);
  const likely = row.shortFrom ?? row.runOutDate;
  const careful = row.carefulRunOutDate;
  if (likely !== null && likely <= today) {
    return `Order today: none left by the book, an order placed today comes ${comes}.`;
  }
  if (likely !== null && likely <= row.arrivalDate) {
    return `Order today: likely gone by ${dayWords(likely, today)}, an order placed today comes ${comes}.`;
  }
  if (careful !== null && careful > row.arrivalDate) {
    return `Order today: lasts until ${dayWords(careful, today)}, an order placed today comes ${comes}.`;
  }
  const until = likely === null ? "" : ` until ${dayWords(likely, today)}`;
  return `Order today: likely lasts${until} but may end sooner, an order placed today comes ${comes}.`;
}

function orderBySentence(row: RowWithoutSentence, today: Day): string {
  if (row.carefulRunOutDate === null || row.orderByDate === null) {
    throw new RangeError(`sentence requires days for ${row.action}, got none for ${row.supplyId}`);
  }
  const orderBy = formatDay(row.orderByDate, { weekday: true });
  return `Lasts until ${dayWords(row.carefulRunOutDate, today)}; order by ${orderBy}.`;
}

function enoughSentence(row: RowWithoutSentence, today: Day): string {
  return row.carefulRunOutDate === null
    ? "Enough: little is used."
    : `Enough until ${dayWords(row.carefulRunOutDate, today)}.`;
}

function onItsWaySentence(row: RowWithoutSentence, today: Day): string {
  const late = lateArrivals(row, today);
  if (late.length > 0) {
    return joined([`${wereDueWords(late, row.unit)}: ask where they are.`, shortSentence(row, today)]);
  }
  const short = shortSentence(row, today);
  return short === "" ? `${dueWords(row.arrivals, row.unit)}. Nothing to do.` : short;
}

/** Where stock likely ends before what is on order comes, and whether an order today would come sooner. */
function shortSentence(row: RowWithoutSentence, today: Day): string {
  const { shortFrom } = row;
  if (shortFrom === null) {
    return "";
  }
  const next = row.arrivals.find((arrival) => arrival.expectedOn > shortFrom);
  const gone = shortFrom <= today ? "None left by the book" : `Likely gone by ${dayWords(shortFrom, today)}`;
  if (next === undefined) {
    return `${gone}.`;
  }
  const sooner =
    row.arrivalDate < next.expectedOn
      ? `; an order placed today comes ${dayWords(row.arrivalDate, today)}`
      : "";
  return `${gone}, before ${formatAmount(next.amount, row.unit)} come ${dayWords(next.expectedOn, today)}${sooner}.`;
}

function arrivalsCounted(row: RowWithoutSentence, today: Day): string {
  if (row.arrivals.length === 0) {
    return "";
  }
  const late = lateArrivals(row, today);
  return late.length > 0
    ? `${wereDueWords(late, row.unit)}: ask where they are.`
    : `${dueWords(row.arrivals, row.unit)}, counted in.`;
}

function lateArrivals(row: RowWithoutSentence, today: Day): Arrival[] {
  return row.arrivals.filter((arrival) => arrival.expectedOn < today);
}

function dueWords(arrivals: readonly Arrival[], unit: UseUnit): string {
  const days = [...new Set(arrivals.map((arrival) => arrival.expectedOn))].sort();
  const [first] = days;
  const when = first === undefined ? "" : formatDay(first);
  return `${totalWords(arrivals, unit)} due ${days.length > 1 ? `from ${when}` : when}`;
}

function wereDueWords(late: readonly Arrival[], unit: UseUnit): string {
  const [first] = late.map((arrival) => arrival.expectedOn).sort();
  return `${totalWords(late, unit)} were due ${first === undefined ? "" : formatDay(first)}`;
}

function totalWords(arrivals: readonly Arrival[], unit: UseUnit): string {
  return formatAmount(sumAmounts(arrivals.map((arrival) => arrival.amount)), unit);
}

function dayWords(of: Day, today: Day): string {
  return formatDay(of, { year: Math.abs(daysBetween(today, of)) >= YEAR_FROM_DAYS });
}

function joined(parts: readonly string[]): string {
  return parts.filter((part) => part !== "").join(" ");
}
