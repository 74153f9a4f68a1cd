import { z } from "zod";
import { dayText, neededText, optionalText, wholeNumber } from "../../_parts/typed-fields";

const MOST_PACKS = 10_000;

/** An order of one supply: which offer, how many packs, and when it should come. */
export const orderForm = z
  .object({
    id: neededText("The form lost its key. Load the page again."),
    offerId: neededText("Choose an offer."),
    packs: wholeNumber(1, MOST_PACKS),
    placedOn: dayText,
    expectedOn: dayText.optional(),
    note: optionalText,
  })
  .refine((order) => order.expectedOn === undefined || order.expectedOn >= order.placedOn, {
    path: ["expectedOn"],
    message: "The day it should come lies before the day it was ordered.",
  });
