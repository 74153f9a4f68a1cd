import { z } from "zod";
import type { CushionTerms } from "#prisma/records/cushion-terms";
import { moneyTyped } from "../_parts/typed-fields";

const MOST_MINUTES = 600;
const PER_HUNDRED = 100;
const PER_MILLE_OF_PER_CENT = 10;
/** Ten times 3.76 is a little less than 37.6 in binary: what was typed is kept. */
const KEPT_DIGITS = 9;

/**
 * What minutes and breakage count for, as the form is filled in.
 *
 * @param minorDigits digits of the currency
 * @returns the schema; it gives the hour and the terms as they are kept
 */
export function cushionSettingsForm(minorDigits: number) {
  const minutes = numberTyped(MOST_MINUTES, "minutes");
  const broken = numberTyped(PER_HUNDRED, "parcels of 100");
  return z
    .object({
      hour: moneyTyped(minorDigits).optional(),
      "minutes.paper": minutes,
      "minutes.bubble": minutes,
      "minutes.mixed": minutes,
      "broken.paper": broken,
      "broken.bubble": broken,
      "broken.mixed": broken,
    })
    .transform((typed): { hourMinor: number | null; terms: CushionTerms } => {
      const perMille = (value: number | undefined) =>
        value === undefined ? null : Number((value * PER_MILLE_OF_PER_CENT).toFixed(KEPT_DIGITS));
      return {
        hourMinor: typed.hour ?? null,
        terms: {
          minutes: {
            paper: typed["minutes.paper"] ?? null,
            bubble: typed["minutes.bubble"] ?? null,
            mixed: typed["minutes.mixed"] ?? null,
          },
          brokenPerMille: {
            paper: perMille(typed["broken.paper"]),
            bubble: perMille(typed["broken.bubble"]),
            mixed: perMille(typed["broken.mixed"]),
          },
        },
      };
    });
}

/** A number from nought, with a point or a comma. */
function numberTyped(most: number, what: string) {
  const problem = `Write ${what} from 0 to ${most}, such as 12 or 1.5.`;
  return z
    .string(problem)
    .regex(/^\d+(?:[.,]\d+)?$/, problem)
    .transform((text) => Number(text.replace(",", ".")))
    .refine((value) => value <= most, problem)
    .optional();
}
