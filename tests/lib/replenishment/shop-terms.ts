import type { ShopTerms } from "#lib/replenishment/weekly-check";

/** Terms of an invented shop that is never closed. */
export const TERMS: ShopTerms = {
  weekStartsOn: 1,
  reviewDays: 7,
  goal: { kind: "cycles", level: 0.95 },
  coverWeeks: 6,
  closed: [],
  currency: "USD",
  minorDigits: 2,
};
