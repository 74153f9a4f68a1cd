/** At most so much for goods and delivery of all orders placed up to and with a week; minor units. */
export type CashLimit = { readonly throughWeek: number; readonly minor: number };

/** What the seller can spend and store. */
export type PlanLimits = {
  readonly cash: readonly CashLimit[];
  /** most litres of supplies at home, right after the arrivals of any week; null where room is no matter */
  readonly litres: number | null;
};
