import { z } from "zod";
import type { Measures } from "#lib/units/measures";
import { lengthTyped, moneyTyped, wholeNumber } from "../_parts/typed-fields";

const MOST_WEEKS = 520;
const MOST_MONTHS = 120;
const MOST_MINUTES = 60;
const LARGEST_BULGE_UM = 50_000;

/**
 * How the shop judges its cartons, as its form is filled in.
 *
 * @param measures how a bare length is read
 * @param minorDigits digits of the currency
 */
export function cartonSettingsForm(measures: Measures, minorDigits: number) {
  return z
    .object({
      slowWeeks: wholeNumber(1, MOST_WEEKS),
      slowMonths: wholeNumber(1, MOST_MONTHS),
      sitsWeeks: wholeNumber(1, MOST_WEEKS),
      sitsMonths: wholeNumber(1, MOST_MONTHS),
      bulge: lengthTyped(measures)
        .refine(({ um }) => um <= LARGEST_BULGE_UM, "At most 5 cm (2 in): check its unit.")
        .optional(),
      cutMinutes: wholeNumber(1, MOST_MINUTES),
      hour: moneyTyped(minorDigits).optional(),
    })
    .superRefine((read, context) => {
      const pairs = [
        ["sitsWeeks", read.slowWeeks, read.sitsWeeks],
        ["sitsMonths", read.slowMonths, read.sitsMonths],
      ] as const;
      for (const [field, slow, sits] of pairs) {
        if (sits >= slow) continue;
        context.addIssue({
          code: "custom",
          path: [field],
          message: "What sits must be at least what is slow.",
        });
      }
    })
    .transform(({ slowWeeks, slowMonths, sitsWeeks, sitsMonths, bulge, cutMinutes, hour }) => ({
      ageing: {
        slow: { silentWeeks: slowWeeks, coverMonths: slowMonths },
        sits: { silentWeeks: sitsWeeks, coverMonths: sitsMonths },
      },
      bulgeUm: bulge?.um ?? 0,
      cutMinutes,
      hourMinor: hour ?? null,
    }));
}
