import { z } from "zod";
import { neededText, wholeNumber } from "../_parts/typed-fields";
import { promiseOf } from "./promise";

/** A one- or two-person shop packs no more in a week; what is typed beyond it is a slip of the finger. */
const MOST_GUESSED = 2_000;

/** The shop's own settings as typed. */
export const shopForm = z.object({
  name: neededText("Give your shop a name."),
  timeZone: z.string("Choose a time zone.").refine(isTimeZone, "Choose a time zone of the list."),
  currency: z.string("Choose a currency.").refine(isCurrency, "Choose a currency of the list."),
  weekStartsOn: wholeNumber(1, 7),
  measures: z.enum(["imperial", "metric"], "Choose inches and pounds, or centimetres and grams."),
  promise: z.string("Choose what the stock should do.").transform((value, context) => {
    const promised = promiseOf(value);
    if (promised !== null) return promised;
    context.addIssue({ code: "custom", message: "Choose what the stock should do." });
    return z.NEVER;
  }),
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
