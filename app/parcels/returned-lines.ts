import { type Amount, amount } from "#lib/units/amount";
import { formatAmount, parseAmount } from "#lib/units/amount-text";
import type { Measures } from "#lib/units/measures";
import type { UseUnit } from "#lib/units/use-unit";

/** Start of the name of a field that says how much of a supply came back. */
export const BACK_FIELD = "back:";

/** What came back, or which fields can't be read. */
export type ReturnedLines = {
  readonly lines: readonly { readonly supplyId: string; readonly amount: Amount }[];
  readonly problems: Readonly<Record<string, string>>;
};

/**
 * Reads how much of each supply came back as saved stock. Empty fields and nothing are left out.
 * @param typed fields of the form by name
 * @param supplies the shop's supplies
 * @param measures the shop's measures
 * @param out what the parcel took of each supply and has not brought back yet
 * @returns lines above nothing, and a problem for each field that can't be read or is more than is out
 */
export function returnedLines(
  typed: Readonly<Record<string, string>>,
  supplies: readonly { readonly id: string; readonly useUnit: UseUnit }[],
  measures: Measures,
  out: ReadonlyMap<string, Amount>,
): ReturnedLines {
  const lines: { supplyId: string; amount: Amount }[] = [];
  const problems: Record<string, string> = {};
  for (const supply of supplies) {
    const text = typed[`${BACK_FIELD}${supply.id}`];
    if (text === undefined) continue;
    const read = parseAmount(text, supply.useUnit, measures);
    if (read.kind === "unreadable" || read.amount < 0) {
      problems[`${BACK_FIELD}${supply.id}`] = `“${text}” can't be read. Type it like 1, 1/2 or 3 ft.`;
    } else if (read.amount > (out.get(supply.id) ?? 0)) {
      const most = formatAmount(out.get(supply.id) ?? amount(0), supply.useUnit);
      problems[`${BACK_FIELD}${supply.id}`] = `No more than ${most} of it went out and can come back.`;
    } else if (read.amount > 0) lines.push({ supplyId: supply.id, amount: read.amount });
  }
  return { lines, problems };
}
