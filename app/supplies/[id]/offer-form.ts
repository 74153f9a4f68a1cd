import { z } from "zod";
import type { Measures } from "#lib/units/measures";
import { parseMoney } from "#lib/units/money";
import type { UseUnit } from "#lib/units/use-unit";
import {
  amountAboveZero,
  moneyTyped,
  neededText,
  tick,
  volumeTyped,
  wholeNumber,
} from "../../_parts/typed-fields";

const MOST_PACKS = 9_999;
const BREAK_EXAMPLE = "3: 36.00, 6: 34.00";

/** One step of a price: from so many packs on, each pack at this price. */
export type PriceBreak = { readonly fromPacks: number; readonly priceMinor: number };

/** A supplier's pack, its price and its price breaks, as typed. */
export function offerForm(unit: UseUnit, measures: Measures, minorDigits: number) {
  return z
    .object({
      offerId: z.string().optional(),
      supplierId: neededText("Choose a supplier; a new one is added under Setup."),
      pack: neededText("Write what comes as one pack: roll of 188 ft."),
      packAmount: amountAboveZero(unit, measures),
      price: moneyTyped(minorDigits).optional(),
      breaks: priceBreaks(minorDigits).optional(),
      breakKind: z.enum(["all-units", "incremental"]).default("all-units"),
      volume: volumeTyped(measures).optional(),
      mostPacks: wholeNumber(1, MOST_PACKS).optional(),
      soldOut: tick,
      retired: tick,
    })
    .superRefine(({ price, breaks = [] }, context) => {
      const steps = breaks.toSorted((a, b) => a.fromPacks - b.fromPacks);
      const dear = steps.find((step, index) => {
        const before = index === 0 ? price : steps[index - 1]?.priceMinor;
        return before !== undefined && step.priceMinor >= before;
      });
      if (dear === undefined) return;
      const message = `The price from ${dear.fromPacks} packs on is not lower than the one before it. Mend it, or leave that step out.`;
      context.addIssue({ code: "custom", path: ["breaks"], message });
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
    const twice = breaks.find((step, index) =>
      breaks.slice(0, index).some((b) => b.fromPacks === step.fromPacks),
    );
    if (breaks.length === steps.length && twice === undefined) return breaks;
    context.addIssue({
      code: "custom",
      message:
        breaks.length < steps.length
          ? `“${text}” can’t be read. Write each step from 2 packs on, like ${BREAK_EXAMPLE}.`
          : `The step from ${twice?.fromPacks} packs on stands twice. Write each step once, like ${BREAK_EXAMPLE}.`,
    });
    return z.NEVER;
  });
}
