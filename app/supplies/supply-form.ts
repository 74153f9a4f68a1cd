import { z } from "zod";
import type { Measures } from "#lib/units/measures";
import { isUseUnit, type UseUnit } from "#lib/units/use-unit";
import {
  amountAboveZero,
  lengthTyped,
  massTyped,
  neededText,
  optionalText,
  sizesTyped,
  tick,
} from "../_parts/typed-fields";

/** Kinds of supply, in the order in which the form offers them. */
export const SUPPLY_KINDS = ["tissue", "paper", "bubble", "tape", "carton", "fill", "other"] as const;

const CARTON_SIZES = 3;

/** The use unit alone, read first: amounts of the form are in it. */
export const useUnitForm = z.object({
  useUnit: z.string("Choose how it is used.").refine(isUseUnit, "Choose how it is used."),
});

/** A supply as its form is filled in: how it is used, how it is counted, its sizes and weights. */
export function supplyForm(unit: UseUnit, measures: Measures) {
  return z
    .object({
      name: neededText("Give it the name that stands on the shelf."),
      kind: z.enum(SUPPLY_KINDS, "Choose what it is."),
      useUnit: z.string().refine(isUseUnit, "Choose how it is used."),
      countUnit: z.string().trim().max(40).optional(),
      countAmount: amountAboveZero(unit, measures).optional(),
      mass: massTyped(measures).optional(),
      sizes: sizesTyped(measures).optional(),
      core: lengthTyped(measures).optional(),
      full: lengthTyped(measures).optional(),
      fullAmount: amountAboveZero(unit, measures).optional(),
      coreMass: massTyped(measures).optional(),
      pileSheets: z
        .string()
        .regex(/^[1-9]\d{0,5}$/, "Write how many sheets were in the pile, like 500.")
        .transform(Number)
        .optional(),
      pileHeight: lengthTyped(measures).optional(),
      wall: z.enum(["single", "double"]).optional(),
      rating: z.string().trim().max(60).optional(),
      ratedMass: massTyped(measures).optional(),
      note: optionalText,
      retired: tick,
    })
    .superRefine((supply, context) => {
      const refuse = (field: string, message: string) =>
        context.addIssue({ code: "custom", path: [field], message });
      if ((supply.countUnit === undefined) !== (supply.countAmount === undefined)) {
        refuse(
          supply.countUnit === undefined ? "countUnit" : "countAmount",
          "Fill in both: the word and what is in one, or neither.",
        );
      }
      if (supply.kind === "carton" && supply.sizes?.um.length !== CARTON_SIZES) {
        refuse("sizes", "A carton needs its three inside sizes, like 12 x 9 x 8.");
      }
      const roll = [supply.core, supply.full, supply.fullAmount].filter((part) => part !== undefined).length;
      if (roll === 1 || roll === 2)
        refuse("full", "A roll needs all three: core, full diameter and what a full one holds.");
      if (supply.core !== undefined && supply.full !== undefined && supply.core.um >= supply.full.um) {
        refuse("full", "A full roll is wider than its core.");
      }
      if ((supply.pileSheets === undefined) !== (supply.pileHeight === undefined)) {
        refuse(
          supply.pileHeight === undefined ? "pileHeight" : "pileSheets",
          "Fill in both: the sheets and the height of the pressed pile.",
        );
      }
    });
}
