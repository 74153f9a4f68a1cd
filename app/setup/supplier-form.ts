import { z } from "zod";
import { moneyTyped, neededText, optionalText, tick, wholeNumber } from "../_parts/typed-fields";

const LONGEST_LEAD = 365;

/** A supplier as typed: how long a delivery takes, what it costs. */
export function supplierForm(minorDigits: number) {
  return z.object({
    name: neededText("Give the supplier a name."),
    leadTimeDays: wholeNumber(0, LONGEST_LEAD),
    delivery: moneyTyped(minorDigits).optional(),
    freeDelivery: moneyTyped(minorDigits).optional(),
    note: optionalText,
    retired: tick,
    sellsAll: tick,
  });
}
