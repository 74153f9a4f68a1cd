import type { SeasonProfile } from "#lib/forecast/season-profile";
import { addDays, day } from "#lib/units/day";
import { formatDay, formatDayLong } from "#lib/units/day-text";
import { countWord } from "../pack/parcel-words";
import { percentText } from "./percent-text";

const PARTS = 13;
const DAYS_A_YEAR = 365.25;
const PERCENT = 100;
/** A year of 365 days to name the parts by. */
const SAMPLE_YEAR = "2026";
const EARLY_UNTIL = 10;
const MID_UNTIL = 20;

/** What the season says, and why there is none where there is none. */
export type SeasonWords = {
  readonly finding: string;
  /** what it was learnt from, and how far it is believed */
  readonly basis: string;
};

/**
 * The year's shape in words.
 *
 * @param season as learnt from all item types together
 * @returns when most and least is sold and by how much, and what that rests on
 */
export function seasonWords({ factors, years, believed }: SeasonProfile): SeasonWords {
  if (years === 0) {
    return {
      finding: "No season is counted on yet.",
      basis:
        "The year’s shape is learnt from 52 weeks of records on. Until then every week counts as a usual one.",
    };
  }
  const learnt = years === 1 ? "one year" : `${countWord(years)} years`;
  if (believed <= 0) {
    return {
      finding: "No season shows: every part of the year counts as the others.",
      basis: `What ${learnt} of records showed differs no more than weeks do by chance.`,
    };
  }
  const most = factors.indexOf(Math.max(...factors));
  const least = factors.indexOf(Math.min(...factors));
  return {
    finding: `Most goes out in ${partName(most)} (${percentWords(factors[most] ?? 1)}), least in ${partName(least)} (${percentWords(factors[least] ?? 1)}).`,
    basis: `Learnt from ${learnt} of all item types together. Of the shape that was seen ${percentText(believed * PERCENT)} is believed, as far as ${years === 1 ? "one year can tell a season from a good month" : "the years agree"}.`,
  };
}

/**
 * Where in the year a thirteenth lies.
 *
 * @param part 0 to 12, from 1 January on
 * @returns a month and which third of it its middle falls in
 * @example partName(0) // "mid-January"
 */
export function partName(part: number): string {
  const middle = addDays(day(`${SAMPLE_YEAR}-01-01`), Math.floor(((part + 0.5) * DAYS_A_YEAR) / PARTS));
  const on = Number(middle.slice(8));
  const month = formatDayLong(middle).split(" ").at(-1) ?? "";
  if (on <= EARLY_UNTIL) return `early ${month}`;
  return on <= MID_UNTIL ? `mid-${month}` : `late ${month}`;
}

/** First and last day of a thirteenth, for a table. */
export function partDays(part: number): string {
  const start = day(`${SAMPLE_YEAR}-01-01`);
  const from = addDays(start, Math.round((part * DAYS_A_YEAR) / PARTS));
  const to = addDays(start, Math.round(((part + 1) * DAYS_A_YEAR) / PARTS) - 1);
  return `${formatDay(from)} to ${formatDay(to)}`;
}

/**
 * A factor around 1 in percent.
 *
 * @param factor how much of the usual
 * @example percentWords(1.34) // "34 % more than usual"
 */
export function percentWords(factor: number): string {
  const percent = Math.round((factor - 1) * PERCENT);
  if (percent === 0) return "as usual";
  return `${percentText(Math.abs(percent))} ${percent > 0 ? "more" : "less"} than usual`;
}
