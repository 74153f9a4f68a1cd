import { feeRows } from "#lib/postage/card-rows/fee-rows";
import type { FeeRows } from "#lib/postage/card-rows/grouped-rows";
import type { RateFee } from "#lib/postage/rate-fee";

const WORDS = ["longest side over", "second side over", "but not over", "volume over", "from", "to"];
const LINE = /^(?<name>.*\S)\s*:\s*(?<amount>[^:;]+?)\s*(?<terms>;.*)?$/;

/**
 * A fee on one line: "Long parcel: 4.50; longest side over 24 in".
 *
 * @param fee of a card
 * @param minorDigits of the currency
 * @returns null for a fee that differs by zone or weight: it takes rows
 */
export function feeLine(fee: RateFee, minorDigits: number): string | null {
  const [group, ...others] = fee.groups;
  const isSame = others.length === 0 && group?.zones === null;
  if (!isSame || group?.rows.length !== 1 || group.rows[0]?.upTo !== null) return null;
  const ONE = "any";
  const rows = feeRows(fee, [ONE], [ONE], minorDigits);
  const amount = rows.at(-1)?.at(-1) ?? "";
  const terms = rows.slice(1, -1).map(([, what, value]) => `${what} ${value}`);
  return [`${fee.name}: ${amount}`, ...terms].join("; ");
}

/**
 * Takes the line of a fee apart.
 *
 * @param text name, colon, amount; then what it hangs on, with semicolons between
 * @param line that problems are noted with
 * @param zoneCount columns of the card, all of which pay it
 * @returns rows as `feeFromRows` reads them, or what is wrong
 */
export function feeLineRows(
  text: string,
  line: number,
  zoneCount: number,
): FeeRows | { readonly problem: string } {
  const { name, amount, terms = "" } = LINE.exec(text.trim())?.groups ?? {};
  if (name === undefined || amount === undefined) {
    return {
      problem: `“${text}” is no fee. Write its name, a colon and the amount: Long parcel: 4.50; longest side over 24 in.`,
    };
  }
  const said: FeeRows["said"] = new Map([["name", { line, value: name, cells: [] }]]);
  for (const term of terms.split(";").map((part) => part.trim())) {
    if (term === "") continue;
    const what = WORDS.find((words) => term.toLowerCase().startsWith(`${words} `));
    if (what === undefined) {
      return {
        problem: `“${term}” says nothing of a fee. Write ${WORDS.join(", ")} with a value behind it.`,
      };
    }
    said.set(what, { line, value: term.slice(what.length).trim(), cells: [] });
  }
  const cells = Array.from({ length: zoneCount }, () => amount);
  return { line, said, amounts: [{ line, value: "", cells, isAnyWeight: true }] };
}
