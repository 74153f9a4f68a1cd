import { type Day, isDay } from "#lib/units/day";
import type { DayFormat } from "#prisma/records/import/import-mapping";

/** The ways to write a day that a file may use. */
export const DAY_FORMATS: readonly DayFormat[] = ["YYYY-MM-DD", "DD.MM.YYYY", "DD/MM/YYYY", "MM/DD/YYYY"];

/** A clock time without a zone may follow the day; it is not needed. */
const TIME = String.raw`(?:[T ]\d{1,2}:\d{2}(?::\d{2}(?:\.\d+)?)?)?$`;

const FORMS: Record<DayFormat, RegExp> = {
  "YYYY-MM-DD": new RegExp(String.raw`^(?<year>\d{4})-(?<month>\d{1,2})-(?<date>\d{1,2})${TIME}`),
  "DD.MM.YYYY": new RegExp(String.raw`^(?<date>\d{1,2})\.(?<month>\d{1,2})\.(?<year>\d{4})${TIME}`),
  "DD/MM/YYYY": new RegExp(String.raw`^(?<date>\d{1,2})/(?<month>\d{1,2})/(?<year>\d{4})${TIME}`),
  "MM/DD/YYYY": new RegExp(String.raw`^(?<month>\d{1,2})/(?<date>\d{1,2})/(?<year>\d{4})${TIME}`),
};

/** Nobody has sold through this program's kind of shop before this day; an earlier one is a slip. */
const EARLIEST_YEAR = 1970;

/**
 * Reads a day in the format that was chosen.
 *
 * @param text "25.11.2026"; a clock time behind it is dropped
 * @param format how days are written in the file
 * @returns the day, or null where the text is no day in this format
 * @example dayOf("11/25/2026", "MM/DD/YYYY") // "2026-11-25"
 */
export function dayOf(text: string, format: DayFormat): Day | null {
  const parts = FORMS[format].exec(text)?.groups;
  if (parts === undefined) return null;
  const { year = "", month = "", date = "" } = parts;
  const iso = `${year}-${month.padStart(2, "0")}-${date.padStart(2, "0")}`;
  return isDay(iso) && Number(year) >= EARLIEST_YEAR ? iso : null;
}

/** Counts in which formats days can be read, one text after the other. */
export class DayFormatTally {
  readonly #counts = new Map<DayFormat, number>();

  /** Counts the formats in which a text is a day. */
  add(text: string): void {
    for (const format of DAY_FORMATS) {
      if (dayOf(text, format) !== null) this.#counts.set(format, (this.#counts.get(format) ?? 0) + 1);
    }
  }

  /**
   * The formats in which most of the texts are days; a slip in a few rows decides nothing. Two of them mean
   * that the texts alone do not say whether 04/05 is in April or in May.
   *
   * @returns formats, none where no text is a day in any
   */
  likeliest(): DayFormat[] {
    const most = Math.max(0, ...this.#counts.values());
    return most === 0 ? [] : DAY_FORMATS.filter((format) => this.#counts.get(format) === most);
  }
}
