import type { MonthSpend } from "#prisma/records/spending";

/** What was spent in a month, by supplier. */
export type SpendMonth = {
  /** "2026-11" */
  readonly month: string;
  readonly minor: number;
  readonly bySupplier: ReadonlyMap<string, number>;
};

/** Where a receipt names no supplier. */
export const SOMEBODY_ELSE = "somebody else";

/**
 * Spending by month, the latest first, with the suppliers in it; months without a receipt between two that have one are
 * there too, with nothing.
 *
 * @param spending sums by month and supplier
 * @returns months, and the names of all suppliers in them, the one with most first
 */
export function spendMonths(spending: readonly MonthSpend[]): {
  readonly months: readonly SpendMonth[];
  readonly suppliers: readonly string[];
} {
  const months = new Map<string, Map<string, number>>();
  const totals = new Map<string, number>();
  for (const { month, supplierName, minor } of spending) {
    const name = supplierName ?? SOMEBODY_ELSE;
    const row = months.get(month) ?? new Map<string, number>();
    row.set(name, (row.get(name) ?? 0) + minor);
    months.set(month, row);
    totals.set(name, (totals.get(name) ?? 0) + minor);
  }
  const named = [...months.keys()].sort();
  return {
    months: monthsBetween(named[0], named.at(-1)).map((month) => {
      const bySupplier = months.get(month) ?? new Map<string, number>();
      return { month, bySupplier, minor: [...bySupplier.values()].reduce((sum, minor) => sum + minor, 0) };
    }),
    suppliers: [...totals].toSorted((a, b) => b[1] - a[1]).map(([name]) => name),
  };
}

function monthsBetween(first: string | undefined, last: string | undefined): string[] {
  if (first === undefined || last === undefined) return [];
  const months = [last];
  while ((months.at(-1) ?? first) > first) months.push(monthBefore(months.at(-1) ?? first));
  return months;
}

function monthBefore(month: string): string {
  const [year = 0, number = 1] = month.split("-").map(Number);
  return number === 1 ? `${year - 1}-12` : `${year}-${String(number - 1).padStart(2, "0")}`;
}
