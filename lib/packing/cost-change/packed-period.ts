import type { RecipeTakes } from "#lib/packing/usual-bill";

/** Parcels of one item type and style: how many, what their card says, and what they took. */
export type PackedStyle = {
  readonly style: string;
  readonly parcels: number;
  readonly pieces: number;
  /** mean of the cards that they were packed by, use units */
  readonly card: RecipeTakes;
  /** in all, cartons too, use units by supply */
  readonly took: ReadonlyMap<string, number>;
};

/** How an item type was packed in a span of days, and what its materials cost then. */
export type PackedPeriod = {
  readonly styles: readonly PackedStyle[];
  /** 1/10,000 minor unit a use unit, by supply, as booked with these parcels */
  readonly unitCosts: ReadonlyMap<string, number>;
};

/**
 * The parcels of a period.
 *
 * @param period - how an item type was packed
 * @returns their number
 */
export function parcelsIn({ styles }: Pick<PackedPeriod, "styles">): number {
  return styles.reduce((sum, { parcels }) => sum + parcels, 0);
}
