import { z } from "zod";
import { moneyTyped, neededText, optionalText, tick, wholeNumber } from "../_parts/typed-fields";
import { closuresTyped, monthDayTyped } from "./supplier-days";

const LONGEST_LEAD = 365;
const MOST_EXTRA_DAYS = 90;

/** A supplier as typed: when it takes orders, how long a delivery takes, what it costs. */
export function supplierForm(minorDigits: number) {
  return z
    .object({
      name: neededText("Give the supplier a name."),
      leadTimeDays: wholeNumber(0, LONGEST_LEAD),
      workingDays: tick,
      delivery: moneyTyped(minorDigits).optional(),
      freeDelivery: moneyTyped(minorDigits).optional(),
      leastOrder: moneyTyped(minorDigits).optional(),
      orderDays: z
        .string("Tick at least one day on which it takes orders.")
        .transform((ticked) => [...new Set(ticked.split(/\s+/))].sort().join(""))
        .refine((days) => /^[1-7]{1,7}$/.test(days), "Tick days of the week only."),
      cutOff: z
        .string()
        .regex(/^([01]?\d|2[0-3]):[0-5]\d$/, "Write a time like 14:00.")
        .transform((time) => time.padStart(5, "0"))
        .optional(),
      closures: closuresTyped.optional(),
      peakFrom: monthDayTyped.optional(),
      peakTo: monthDayTyped.optional(),
      peakExtraDays: wholeNumber(0, MOST_EXTRA_DAYS).optional(),
      note: optionalText,
      retired: tick,
      sellsAll: tick,
    })
    .superRefine((supplier, context) => {
      const parts = ["peakFrom", "peakTo", "peakExtraDays"] as const;
      const missing = parts.filter((part) => supplier[part] === undefined);
      if (missing.length === 0 || missing.length === parts.length) return;
      const message =
        "Fill in all three: first day, last day and how many days longer it takes. Or leave all empty.";
      context.addIssue({ code: "custom", path: [missing[0] ?? "peakFrom"], message });
    });
}
