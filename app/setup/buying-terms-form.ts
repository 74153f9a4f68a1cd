import { z } from "zod";
import type { Measures } from "#lib/units/measures";
import type { BuyingTerms } from "#prisma/records/buying-terms";
import { moneyTyped, volumeTyped, wholeNumber } from "../_parts/typed-fields";

/** What counts where a field is left empty; common practice, no source. */
const USUAL = { longestCoverWeeks: 26, holdingPerMille: 200 };
const MOST_WEEKS = 260;
const MOST_PERCENT = 100;

/**
 * What the shop has decided about its buying, as typed.
 *
 * @param minorDigits digits of the shop's currency
 * @param measures for a room without a unit
 * @param coverWeeks weeks that an order should last: the longest cover cannot be shorter
 */
export function buyingTermsForm(minorDigits: number, measures: Measures, coverWeeks: number) {
  return z
    .object({
      longestCoverWeeks: wholeNumber(1, MOST_WEEKS).optional(),
      holding: percentTyped.optional(),
      orderCost: moneyTyped(minorDigits).optional(),
      weekLimit: moneyTyped(minorDigits).optional(),
      room: volumeTyped(measures).optional(),
    })
    .refine((terms) => (terms.longestCoverWeeks ?? USUAL.longestCoverWeeks) >= coverWeeks, {
      path: ["longestCoverWeeks"],
      message: `An order should last ${coverWeeks} weeks: the longest cover must be at least that.`,
    });
}

/** A percentage to one decimal, kept per thousand. */
const percentTyped = z.string().transform((text, context): number => {
  const match = /^(\d{1,3}(?:[.,]\d)?)\s*%?$/.exec(text);
  const percent = Number(match?.[1]?.replace(",", "."));
  if (match !== null && percent <= MOST_PERCENT) return Math.round(percent * 10);
  context.addIssue({
    code: "custom",
    message: `“${text}” can’t be read. Write a percentage from 0 to 100, like 20.`,
  });
  return z.NEVER;
});

/** The terms that a filled form stands for; what was left empty counts as usual, or as no limit. */
export function termsOf(read: z.output<ReturnType<typeof buyingTermsForm>>): Omit<BuyingTerms, "goal"> {
  return {
    longestCoverWeeks: read.longestCoverWeeks ?? USUAL.longestCoverWeeks,
    holdingPerMille: read.holding ?? USUAL.holdingPerMille,
    orderCostMinor: read.orderCost ?? 0,
    weekLimitMinor: read.weekLimit ?? null,
    roomMl: read.room?.ml ?? null,
    roomTyped: read.room?.typed ?? null,
  };
}
