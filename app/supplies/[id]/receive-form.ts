import { z } from "zod";
import type { UseUnit } from "#lib/units/use-unit";
import type { Shop } from "#prisma/records/shop";
import {
  amountAboveZero,
  dayText,
  moneyTyped,
  neededText,
  optionalText,
  tick,
  wholeNumber,
} from "../../_parts/typed-fields";
import { invoiceShape, rateProblem, typedDigits } from "../../buying/invoice-form";

const MOST_PACKS = 10_000;
/**
 * What came in of one supply: the real packs and the real price, not what was ordered.
 *
 * @param unit of the supply
 * @param shop its measures and its money
 * @param currency of the invoice as typed: prices are read with its digits
 */
export function receiveForm(
  unit: UseUnit,
  shop: Pick<Shop, "measures" | "minorDigits" | "currency">,
  currency: string | undefined,
) {
  const { measures } = shop;
  const minorDigits = typedDigits(currency, shop);
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
      ...invoiceShape(minorDigits),
      moreCame: tick,
      restPacks: wholeNumber(0, MOST_PACKS).optional(),
      restExpectedOn: dayText.optional(),
      note: optionalText,
    })
    .superRefine((receipt, context) => {
      const problem = receipt.kind === "paid" ? rateProblem(receipt, shop.currency) : null;
      if (problem !== null) context.addIssue({ code: "custom", path: ["rate"], message: problem });
    })
    .refine((receipt) => (receipt.restPacks ?? 0) === 0 || receipt.restExpectedOn !== undefined, {
      path: ["restExpectedOn"],
      message: "Say when the rest should come.",
    });
}
