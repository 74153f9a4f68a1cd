import { z } from "zod";
import { flutesOf } from "#lib/cartons/board/board-caliper";
import { isMaterial } from "#lib/packing/material";
import type { Measures } from "#lib/units/measures";
import { isUseUnit, type UseUnit } from "#lib/units/use-unit";
import {
  amountAboveZero,
  dayText,
  lengthTyped,
  massTyped,
  neededText,
  optionalText,
  sizesTyped,
  tick,
  wholeNumber,
} from "../_parts/typed-fields";
import { promiseOf } from "../setup/promise";
import { type CartonParts, cartonDisagreements, type Disagreement } from "./carton-disagreements";

/** Kinds of supply, in the order in which the form offers them. */
export const SUPPLY_KINDS = ["tissue", "paper", "bubble", "tape", "carton", "fill", "other"] as const;

const MOST_SHELF_DAYS = 3_650;

/** A goal of its own; left out where the shop's counts. */
const promiseTyped = z.string().transform((value, context) => {
  const promised = promiseOf(value);
  if (promised !== null) return promised;
  context.addIssue({ code: "custom", message: "Choose what the stock should do." });
  return z.NEVER;
});

/** Flutes of a board: "C", "BC". */
const flutesTyped = z.string().transform((text, context) => {
  const flutes = flutesOf(text);
  if (flutes !== null) return flutes.join("");
  context.addIssue({
    code: "custom",
    message: `“${text}” names no board. Write its flutes: E, B, C or A; BC for double wall.`,
  });
  return z.NEVER;
});

/** The fields that must agree with one another. */
type SupplyParts = CartonParts & {
  readonly countUnit?: string | undefined;
  readonly countAmount?: unknown;
  readonly core?: { readonly um: number } | undefined;
  readonly full?: { readonly um: number } | undefined;
  readonly fullAmount?: unknown;
  readonly pileSheets?: number | undefined;
  readonly pileHeight?: unknown;
};

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
      material: z.string().refine(isMaterial, "Choose what it is made of.").optional(),
      layer: lengthTyped(measures).optional(),
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
      wall: z.enum(["single", "double", "triple"]).optional(),
      rating: z.string().trim().max(60).optional(),
      ratedMass: massTyped(measures).optional(),
      flutes: flutesTyped.optional(),
      outside: sizesTyped(measures).optional(),
      board: z.enum(["new", "reused"]).optional(),
      promise: promiseTyped.optional(),
      shelfLife: wholeNumber(1, MOST_SHELF_DAYS).optional(),
      lastUseOn: dayText.optional(),
      note: optionalText,
      retired: tick,
    })
    .superRefine((supply, context) => {
      for (const [field, message] of disagreements(supply)) {
        context.addIssue({ code: "custom", path: [field], message });
      }
    });
}

/** What no field can see alone: parts that need one another. */
function disagreements(supply: SupplyParts): Disagreement[] {
  return [
    ...halfFilled(supply, ["countUnit", "countAmount"], "the word and what is in one, or neither"),
    ...(supply.kind === "carton" ? cartonDisagreements(supply) : []),
    ...rollDisagreements(supply),
    ...halfFilled(supply, ["pileSheets", "pileHeight"], "the sheets and the height of the pressed pile"),
  ];
}

function halfFilled(
  supply: SupplyParts,
  pair: readonly [keyof SupplyParts, keyof SupplyParts],
  both: string,
): Disagreement[] {
  const [missing, ...more] = pair.filter((field) => supply[field] === undefined);
  return missing === undefined || more.length > 0 ? [] : [[missing, `Fill in both: ${both}.`]];
}

function rollDisagreements({ core, full, fullAmount }: SupplyParts): Disagreement[] {
  const filled = [core, full, fullAmount].filter((part) => part !== undefined).length;
  const found: Disagreement[] = [];
  if (filled === 1 || filled === 2) {
    found.push(["full", "A roll needs all three: core, full diameter and what a full one holds."]);
  }
  if (core !== undefined && full !== undefined && core.um >= full.um) {
    found.push(["full", "A full roll is wider than its core."]);
  }
  return found;
}
