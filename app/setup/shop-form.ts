import { z } from "zod";
import { neededText, wholeNumber } from "../_parts/typed-fields";

/** How sure the shop wants to be not to run out before a delivery, in words; per thousand in the database. */
export const SERVICE_LEVELS = [
  { value: "900", words: "9 times in 10: little in stock, some bad weeks" },
  { value: "950", words: "19 times in 20: the usual choice" },
  { value: "980", words: "49 times in 50: more in stock" },
  { value: "990", words: "99 times in 100: much more in stock" },
] as const;

/** A one- or two-person shop packs no more in a week; what is typed beyond it is a slip of the finger. */
const MOST_GUESSED = 2_000;

/** The shop's own settings as typed. */
export const shopForm = z.object({
  name: neededText("Give your shop a name."),
  timeZone: z.string("Choose a time zone.").refine(isTimeZone, "Choose a time zone of the list."),
  currency: z.string("Choose a currency.").refine(isCurrency, "Choose a currency of the list."),
  weekStartsOn: wholeNumber(1, 7),
  measures: z.enum(["imperial", "metric"], "Choose inches and pounds, or centimetres and grams."),
  servicePerMille: wholeNumber(500, 999),
  coverWeeks: wholeNumber(1, 104),
  reviewDays: wholeNumber(1, 60),
  defaultStyle: z.enum(["paper", "bubble", "mixed"], "Choose how you usually pack."),
  guessedParcels: wholeNumber(1, MOST_GUESSED)
    .optional()
    .transform((parcels) => parcels ?? null),
});

/** Whether the platform knows a time zone of this name. */
function isTimeZone(name: string): boolean {
  return name === "UTC" || Intl.supportedValuesOf("timeZone").includes(name);
}

function isCurrency(code: string): boolean {
  return Intl.supportedValuesOf("currency").includes(code);
}

/** Digits after the point of a currency: 2 for most, 0 for some. */
export function minorDigitsOf(currency: string): number {
  return (
    new Intl.NumberFormat("en", { style: "currency", currency }).resolvedOptions().maximumFractionDigits ?? 2
  );
}
