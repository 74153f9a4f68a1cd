/** From so many packs of one order on, a pack costs so much; minor units. */
export type PlanPriceStep = { readonly fromPacks: number; readonly priceMinor: number };

/** A pack of a supply that a supplier sells. */
export type PlanOffer = {
  readonly id: string;
  readonly supplyId: string;
  readonly supplierId: string;
  readonly unitsPerPack: number;
  /**
   * Price steps, `fromPacks` rising; the first says the fewest packs that are sold. A later step may be dearer.
   * Null where no price is known: such an offer is left out and named.
   */
  readonly steps: readonly PlanPriceStep[] | null;
  /** "all-units": the step reached is the price of every pack; "incremental": of the packs from it on */
  readonly kind: "all-units" | "incremental";
  /** an order of week t arrives before the use of week t + leadWeeks */
  readonly leadWeeks: number;
  /** most packs of one order; null where there is no such limit */
  readonly mostPacks: number | null;
};
