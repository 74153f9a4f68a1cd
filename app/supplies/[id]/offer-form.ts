import { z } from "zod";
import type { Measures } from "#lib/units/measures";
import { parseMoney } from "#lib/units/money";
import type { UseUnit } from "#lib/units/use-unit";
import { amountAboveZero, moneyTyped, neededText, tick } from "../../_parts/typed-fields";

const BREAK_EXAMPLE = "3: 36.00, 6: 34.00";

/** One step of a price: from so many packs on, each pack at this price. */
export type PriceBreak = { readonly fromPacks: number; readonly priceMinor: number };

/** A supplier's pack, its price and its price breaks, as typed. */
export function offerForm(unit: UseUnit, measures: Measures, minorDigits: number) {
  return z.object({
    offerId: z.string().optional(),
    supplierId: neededText("Choose a supplier; a new one is added under Setup."),
    pack: neededText("Write what comes as one pack: roll of 188 ft."),
    packAmount: amountAboveZero(unit, measures),
    price: moneyTyped(minorDigits).optional(),
    breaks: priceBreaks(minorDigits).optional(),
    retired: tick,
  });
}

/** Price breaks in one line: packs, a colon, the price of one pack. */
function priceBreaks(minorDigits: number) {
  return z.string().transform((text, context): PriceBreak[] => {
    const steps = text.split(/[;,]\s+|[;\n]|,(?=\s*\d+\s*:)/).filter((part) => part.trim() !== "");
    const breaks = steps.flatMap((part) => {
      const match = /^\s*(\d+)\s*(?::|\bat\b)\s*(.+?)\s*$/.exec(part);
      const price = match === null ? null : parseMoney(match[2] ?? "", minorDigits);
      const fromPacks = Number(match?.[1]);
      return price?.kind === "money" && price.minor >= 0 && fromPacks > 1
        ? [{ fromPacks, priceMinor: price.minor }]
        : [];
    });
    const isEachOnce = new Set(breaks.map((step) => step.fromPacks)).size === steps.length;
    if (isEachOnce) return breaks;
    context.addIssue({
      code: "custom",
      message: `“${text}” can’t be read. Write each step once, from 2 packs on, like ${BREAK_EXAMPLE}.`,
    });
    return z.NEVER;
  });
}
