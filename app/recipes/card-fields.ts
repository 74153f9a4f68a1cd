import { z } from "zod";
import type { Measures } from "#lib/units/measures";
import type { UseUnit } from "#lib/units/use-unit";
import { amountAboveZero, massTyped, neededText, wholeNumber } from "../_parts/typed-fields";
import type { TypedRow } from "./typed-rows";

const MOST_PIECES = 999;

/** A supply as the form of a card knows it. */
export type CardSupply = {
  readonly name: string;
  readonly kind: string;
  readonly useUnit: UseUnit;
  readonly retired: boolean;
};

/** What the form of a card is read with. */
export type CardTerms = {
  /** every supply by id, those no longer used too */
  readonly supplies: ReadonlyMap<string, CardSupply>;
  readonly measures: Measures;
};

/** Whether a row is a step: words or an amount were typed. */
export function isStepRow({ values }: TypedRow): boolean {
  return values["words"] !== undefined || values["amount"] !== undefined;
}

/** Whether a row is a carton: a number of pieces was typed. */
export function isCartonRow({ values }: TypedRow): boolean {
  return values["upTo"] !== undefined;
}

/**
 * What a step takes, as typed: supply, amount, per piece or per parcel. Its save and its live sum read it so.
 *
 * @param supplyId the supply chosen in the row: its use unit reads the amount
 * @param terms supplies and measures
 * @returns the fields of a schema
 */
export function takenFields(supplyId: string | undefined, { supplies, measures }: CardTerms) {
  const unit = supplies.get(supplyId ?? "")?.useUnit ?? "each";
  return {
    supplyId: usedSupply("Choose what it takes.", supplies),
    amount: amountAboveZero(unit, measures).transform(({ amount, typedValue, typedUnit }) => ({
      amount,
      typedValue,
      typedUnit,
    })),
    per: z.enum(["piece", "parcel"], "Choose each piece or once a parcel."),
  };
}

/** A row that says which carton takes up to so many pieces. */
export function cartonForm({ supplies }: CardTerms) {
  return z
    .object({
      upTo: wholeNumber(1, MOST_PIECES),
      cartonId: usedSupply("Choose a carton.", supplies, "carton"),
    })
    .transform(({ upTo, cartonId }) => ({ upTo, supplyId: cartonId }));
}

/** What the bare piece weighs, with what was typed; it may be left out. */
export function bareMass(measures: Measures) {
  return massTyped(measures)
    .refine(({ mg }) => mg > 0, "Write a weight above zero, or leave the field empty.")
    .optional();
}

function usedSupply(needed: string, supplies: CardTerms["supplies"], kind?: string) {
  return neededText(needed).superRefine((id, context) => {
    const supply = supplies.get(id);
    if (supply === undefined || (kind !== undefined && supply.kind !== kind)) {
      context.addIssue({ code: "custom", message: `Choose a ${kind ?? "supply"} of the list.` });
    } else if (supply.retired) {
      context.addIssue({
        code: "custom",
        message: `“${supply.name}” is no longer used. Choose another, or take it back into use under Supplies.`,
      });
    }
  });
}
