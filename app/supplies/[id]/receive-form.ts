import { z } from "zod";
import type { Measures } from "#lib/units/measures";
import type { UseUnit } from "#lib/units/use-unit";
import {
  amountAboveZero,
  dayText,
  moneyTyped,
  neededText,
  optionalText,
  tick,
  wholeNumber,
} from "../../_parts/typed-fields";

const MOST_PACKS = 10_000;
const MILLION = 1_000_000;
/** The largest number that the column for rates holds. */
const MOST_RATE = 2_147_483_647;
const RATE_PROBLEM = "Write what one unit of the invoice’s currency costs in yours, like 1.0836.";

/** A rate of exchange, kept in millionths. */
const rate = z.string().transform((text, context): number => {
  const value = /^\d+([.,]\d{1,6})?$/.test(text) ? Math.round(Number(text.replace(",", ".")) * MILLION) : 0;
  if (value > 0 && value <= MOST_RATE) return value;
  context.addIssue({ code: "custom", message: RATE_PROBLEM });
  return z.NEVER;
});

/** What came in of one supply: the real packs and the real price, not what was ordered. */
export function receiveForm(unit: UseUnit, measures: Measures, minorDigits: number) {
  return z
    .object({
      id: neededText("The form lost its key. Load the page again."),
      kind: z.enum(["paid", "free", "saved"]),
      supplierId: z.string().optional(),
      purchaseLineId: z.string().optional(),
      receivedOn: dayText,
      packs: wholeNumber(1, MOST_PACKS),
      packAmount: amountAboveZero(unit, measures),
      price: moneyTyped(minorDigits).optional(),
      delivery: moneyTyped(minorDigits).optional(),
      tax: moneyTyped(minorDigits).optional(),
      taxOnTop: tick,
      currency: z
        .string()
        .trim()
        .toUpperCase()
        .regex(/^[A-Z]{3}$/, "Write the three letters of a currency, like USD."),
      rate: rate.default(MILLION),
      restPacks: wholeNumber(0, MOST_PACKS).optional(),
      restExpectedOn: dayText.optional(),
      note: optionalText,
    })
    .refine((receipt) => (receipt.restPacks ?? 0) === 0 || receipt.restExpectedOn !== undefined, {
      path: ["restExpectedOn"],
      message: "Say when the rest should come.",
    });
}
