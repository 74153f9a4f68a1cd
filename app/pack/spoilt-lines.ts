import { amount } from "#lib/units/amount";
import { amountAsTyped } from "#lib/units/amount-text";
import { lineText, lineUnit, lineValue, shownUnit } from "./card-line";
import type { PackingChoices, SupplyChoice } from "./packing-choices";
import type { CardLine, PackingDraft } from "./packing-draft";
import type { SpoiltForm } from "./spoilt-form";

/** A supply of which some may have been spoilt, with one unit of it as the card shows it. */
export type SpoiltLine = { readonly supply: SupplyChoice; readonly line: CardLine };

/**
 * What may be spoilt at the bench: the supplies of the card in its order, its cartons, and others that were asked for.
 * @param draft the parcel on the bench
 * @param others ids of further supplies
 * @param choices what the shop has
 * @returns each supply once, with one unit of it
 */
export function spoiltLines(
  draft: Pick<PackingDraft, "lines" | "cartons">,
  others: readonly string[],
  choices: Pick<PackingChoices, "supplies" | "measures">,
): readonly SpoiltLine[] {
  const ids = [
    ...draft.lines.map(({ supplyId }) => supplyId),
    ...draft.cartons.flatMap(({ supplyId }) => supplyId ?? []),
    ...others,
  ];
  return [...new Set(ids)].flatMap((supplyId): SpoiltLine[] => {
    const supply = choices.supplies.find(({ id }) => id === supplyId);
    if (supply === undefined) return [];
    const onCard = draft.lines.find((each) => each.supplyId === supplyId);
    const { shownUnit: unit, oneShown } = onCard ?? shownUnit(supply, null, choices.measures);
    const line = {
      key: supplyId,
      supplyId,
      amount: amount(oneShown),
      shownUnit: unit,
      oneShown,
      words: null,
      recipeStepId: null,
    };
    return [{ supply, line }];
  });
}

/**
 * What was spoilt in words.
 * @example spoiltWords({ supply: tissue, line: oneSheet }) // "1 sheet of Tissue"
 */
export function spoiltWords({ supply, line }: SpoiltLine): string {
  const text = lineText(line, supply.unit);
  return lineUnit(line, supply.unit) === ""
    ? `${amountAsTyped(line.amount, supply.unit)} × ${supply.name}`
    : `${text} of ${supply.name}`;
}

/**
 * What was spoilt as it is sent.
 * @param spoilt the supply and how much of it
 * @param words why; empty where nobody said
 */
export function spoiltFormOf({ supply, line }: SpoiltLine, words: string): Omit<SpoiltForm, "shownAfter"> {
  return {
    supplyId: supply.id,
    amount: line.amount,
    value: lineValue(line),
    unit: lineUnit(line, supply.unit),
    words,
  };
}
