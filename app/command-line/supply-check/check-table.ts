import type { CheckAction, CheckRow } from "#lib/replenishment/check-row";
import type { WeeklyCheck } from "#lib/replenishment/weekly-check";
import { formatAmount, formatEstimate } from "#lib/units/amount-text";
import { type Day, day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";

const ACTION_WORDS: Readonly<Record<CheckAction, string>> = {
  "order-today": "Order today",
  "order-this-week": "Order this week",
  count: "Count",
  "on-its-way": "On its way",
  "order-later": "Later",
  enough: "Enough",
  "no-use": "Not used",
};

const HEADINGS = ["", "Supply", "On hand", "On order", "Use a week", "Runs out", "Order by", "Packs"];
const GAP = "  ";
const UNKNOWN = "?";
const NUMBERS_FROM = 2;
const NUMBERS_TO = 4;

/**
 * Writes the weekly check for a terminal: the finding, one line a supply, and each supply's sentence.
 *
 * @param check - the weekly check
 * @returns lines of text, the last one ended
 * @example process.stdout.write(checkTable(check));
 */
export function checkTable(check: WeeklyCheck): string {
  const cells = check.rows.map(rowCells);
  const widths = HEADINGS.map((heading, column) =>
    Math.max(heading.length, ...cells.map((row) => (row[column] ?? "").length)),
  );
  const lines = [HEADINGS, widths.map((width) => "-".repeat(width)), ...cells].map((row) =>
    tableLine(row, widths),
  );
  const sentences = check.rows.map((row) => `${row.supply}: ${row.sentence}`);
  const head = [`Supplies on ${formatDay(day(check.day), { weekday: true, year: true })}`, check.finding, ""];
  return `${[...head, ...lines, "", ...sentences].join("\n")}\n`;
}

function rowCells(row: CheckRow): string[] {
  return [
    ACTION_WORDS[row.action],
    row.supply,
    row.onHand === null ? UNKNOWN : formatAmount(row.onHand, row.unit),
    row.onOrder === 0 ? "" : formatAmount(row.onOrder, row.unit),
    row.usePerWeek === null ? UNKNOWN : formatEstimate(row.usePerWeek, row.unit),
    dayText(row.runOutDate),
    dayText(row.orderByDate),
    row.suggestedPacks === null || row.suggestedPacks === 0 ? "" : String(row.suggestedPacks),
  ];
}

function dayText(on: Day | null): string {
  return on === null ? "" : formatDay(on, { weekday: true });
}

function tableLine(cells: readonly string[], widths: readonly number[]): string {
  const padded = widths.map((width, column) => {
    const cell = cells[column] ?? "";
    const toTheRight = column >= NUMBERS_FROM && column <= NUMBERS_TO;
    return toTheRight ? cell.padStart(width) : cell.padEnd(width);
  });
  return padded.join(GAP).trimEnd();
}
