import type { CheckRow } from "#lib/replenishment/weekly-check";
import { formatDay } from "#lib/units/day-text";

/** How loud a row is: its colour, always beside its words. */
export type RowTone = "act" | "soon" | "stock";

/** A row's sentence, with the words that ask for something apart. */
export type ActionWords = {
  readonly tone: RowTone;
  readonly before: string;
  /** Empty where there is nothing to do. */
  readonly asked: string;
  readonly after: string;
};

/**
 * Takes a row's sentence apart at the words that ask for something, so that they can stand out.
 *
 * @param row - a row of the weekly check
 * @returns the sentence in three parts, and how loud the row is
 * @example actionWords(row) // { tone: "act", before: "Lasts until 7 Dec; ", asked: "order by Fri 27 Nov", after: "." }
 */
export function actionWords(row: Pick<CheckRow, "action" | "orderByDate" | "sentence">): ActionWords {
  const { tone, phrase } = asking(row);
  const from = phrase === "" ? -1 : row.sentence.indexOf(phrase);
  if (from === -1) return { tone, before: row.sentence, asked: "", after: "" };
  const to = from + phrase.length;
  return { tone, before: row.sentence.slice(0, from), asked: phrase, after: row.sentence.slice(to) };
}

function asking(row: Pick<CheckRow, "action" | "orderByDate">): { tone: RowTone; phrase: string } {
  const by = row.orderByDate === null ? "" : `order by ${formatDay(row.orderByDate, { weekday: true })}`;
  switch (row.action) {
    case "order-today":
      return { tone: "act", phrase: "Order today" };
    case "order-this-week":
      return { tone: "act", phrase: by };
    case "order-later":
      return { tone: "soon", phrase: by };
    case "count":
      return { tone: "soon", phrase: "count this" };
    case "on-its-way":
    case "enough":
    case "no-use":
      return { tone: "stock", phrase: "" };
    default:
      return row.action satisfies never;
  }
}
