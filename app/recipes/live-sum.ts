import { z } from "zod";
import { billBySupply, type SupplyBill } from "#lib/packing/bill-by-supply";
import { type CardSum, cardSum, type SupplyTerms } from "#lib/packing/card-sum";
import type { CushionStyle, RecipeVersion } from "#lib/packing/recipe-version";
import type { Day } from "#lib/units/day";
import { problemsOf } from "../_parts/form-state";
import { bareMass, type CardTerms, cartonForm, isCartonRow, isStepRow, takenFields } from "./card-fields";
import { type ProblemRow, problemRows } from "./problem-rows";
import { typedRows } from "./typed-rows";

/** What the sum of a typed card is reckoned with. */
export type SumGround = CardTerms & {
  readonly itemTypeId: string;
  readonly style: CushionStyle;
  readonly today: Day;
  readonly terms: SupplyTerms;
  /** the cards that hold today, one a style */
  readonly cards: readonly RecipeVersion[];
};

/** What a card comes to as it is typed, beside the cards that hold. */
export type LiveSum = {
  readonly sum: CardSum;
  readonly bill: readonly SupplyBill[];
  /** the card of this style that holds today, null for a first one */
  readonly inUse: CardSum | null;
  readonly others: readonly { readonly style: CushionStyle; readonly sum: CardSum }[];
  /** why a row is not in the sum, by field; a row whose amount is still missing has none */
  readonly problems: Readonly<Record<string, string>>;
  /** rows that the sum leaves out */
  readonly without: readonly ProblemRow[];
};

/**
 * What one piece by a card comes to while the card is typed. What can't be read is left out and named; words and places
 * of steps do not matter to it. All cards are reckoned with the bare weight as typed.
 *
 * @param typed field names and texts of the form; empty ones missing
 * @param ground supplies with their masses and prices, and the cards that hold today
 * @returns the sum, its bill by supply, the other cards, and what is left out
 */
export function liveSum(typed: Readonly<Record<string, string>>, ground: SumGround): LiveSum {
  const found: Record<string, string> = {};
  const read = <T>(form: z.ZodType<T>, values: unknown, at: (field: string) => string): T[] => {
    const result = form.safeParse(values);
    if (result.success) return [result.data];
    for (const [field, words] of Object.entries(problemsOf(result.error))) found[at(field)] = words;
    return [];
  };
  const rows = typedRows(typed);
  const steps = rows.filter(isStepRow).flatMap(({ row, values }) =>
    read(z.object(takenFields(values["supplyId"], ground)), values, (field) => `${field}.${row}`).map(
      ({ amount, ...step }) => ({
        id: String(row),
        position: row,
        words: values["words"] ?? "",
        ...step,
        ...amount,
      }),
    ),
  );
  const cartons = rows
    .filter(isCartonRow)
    .flatMap(({ row, values }) => read(cartonForm(ground), values, (field) => `${field}.${row}`));
  const [mass] = read(bareMass(ground.measures), typed["mass"], () => "mass");
  const { itemTypeId, style, today, terms, cards } = ground;
  const card = { id: "as-typed", itemTypeId, style, effectiveFrom: today, steps, cartons };
  const sumOf = (version: RecipeVersion): CardSum => cardSum(version, 1, mass?.mg ?? null, terms);
  const own = cards.find((each) => each.style === style);
  return {
    sum: sumOf(card),
    bill: billBySupply(card, 1, terms),
    inUse: own === undefined ? null : sumOf(own),
    others: cards.filter((each) => each !== own).map((each) => ({ style: each.style, sum: sumOf(each) })),
    problems: Object.fromEntries(Object.entries(found).filter(([field]) => typed[field] !== undefined)),
    without: problemRows(found),
  };
}
