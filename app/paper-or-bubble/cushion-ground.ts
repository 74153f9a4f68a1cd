import type { UnitPrices } from "#lib/cushioning/way-cost";
import type { PackingGround } from "#lib/cushioning/ways-to-pack";
import type { Day } from "#lib/units/day";
import type { CushionTerms } from "#prisma/records/cushion-terms";
import type { ItemType } from "#prisma/records/item-types";
import type { ReadRateCard } from "#prisma/records/rate-cards";
import type { SentRow } from "#prisma/records/sent-kinds";
import type { Offer } from "#prisma/records/suppliers";
import type { Supply } from "#prisma/records/supplies";
import type { Zone } from "#prisma/records/zones";

/** All that paper and bubble are compared with. */
export type CushionGround = {
  readonly today: Day;
  /** those out of use too */
  readonly supplies: readonly Supply[];
  readonly itemTypes: readonly ItemType[];
  readonly zones: readonly Zone[];
  /** in the shop's order */
  readonly cards: readonly ReadRateCard[];
  /** parcels of the last half year by zone */
  readonly zoneCounts: readonly { readonly zoneId: string; readonly parcels: number }[];
  readonly offers: readonly Offer[];
  /** weeks that an order should last: the time ahead that is compared */
  readonly weeks: number;
  /** pieces expected in those weeks, by item type */
  readonly expectedPieces: ReadonlyMap<string, number>;
  /** what was sent of late */
  readonly sent: readonly SentRow[];
  readonly packing: PackingGround;
  readonly book: UnitPrices;
  readonly replacement: UnitPrices;
  /** litres of a use unit on the shelf */
  readonly litres: ReadonlyMap<string, number>;
  /** an hour of the packer's time, minor units; null: it is not counted */
  readonly hourMinor: number | null;
  readonly said: CushionTerms;
};
