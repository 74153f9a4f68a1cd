import { z } from "zod";
import { AMOUNT_PER_UNIT } from "#lib/units/amount";

/** As much as a supply's own page takes. */
const MOST_UNITS = 10_000_000;

/** What was spoilt at the bench, today: of which supply, how much, why, and the newest ledger line that the bench has seen. */
export const spoiltForm = z.object({
  supplyId: z.string().min(1).max(120),
  /** Integer of 1/12,000 use unit. */
  amount: z
    .number()
    .int()
    .positive("An amount above zero.")
    .max(MOST_UNITS * AMOUNT_PER_UNIT),
  /** The amount as it was shown, and its unit: "1/2", "sheet"; an empty unit for each. */
  value: z.string().min(1).max(40),
  unit: z.string().max(24),
  /** Why; empty where nobody said. */
  words: z.string().trim().max(200),
  shownAfter: z.number().int().nonnegative(),
});

/** What is sent. */
export type SpoiltForm = z.input<typeof spoiltForm>;
