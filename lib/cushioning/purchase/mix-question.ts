import type { CushionStyle } from "#lib/packing/recipe-version";
import type { PlanOffer } from "#lib/purchasing/plan/plan-offer";
import type { PlanSupplier } from "#lib/purchasing/plan/plan-supplier";

/** A supply that parcels take, until the next purchase. */
export type MixSupply = {
  readonly id: string;
  /** use units, with what is on order and comes in time; at least 0 */
  readonly onHand: number;
  /** use units wanted left at the end */
  readonly keep: number;
  /** what one use unit left over is worth, minor units, fractional */
  readonly leftMinor: number;
  /** use units left over that are worth that much; what is left beyond them is worth nothing; may be infinite */
  readonly worthUpTo: number;
  readonly litresPerUnit: number;
};

/** A supplier's terms for the one order. */
export type MixSupplier = Pick<PlanSupplier, "id" | "deliveryMinor" | "freeFromMinor" | "leastOrderMinor">;

/** A pack that can be bought; `mostPacks` 0 where it is sold out, null without a limit. */
export type MixOffer = Omit<PlanOffer, "leadWeeks">;

/** A way to pack an item type: one for each cushion style that it has a recipe in. */
export type MixWay = {
  readonly style: CushionStyle;
  /** what one parcel takes, use units; each supply once */
  readonly takes: readonly { readonly supplyId: string; readonly units: number }[];
  /** expected postage of one parcel, minor units, fractional */
  readonly sendMinor: number;
  /** what else one parcel costs: minutes, expected breakage; minor units, fractional */
  readonly otherMinor: number;
};

/** An item type, the parcels expected of it, and the ways it may be packed. */
export type MixType = {
  readonly id: string;
  /** expected until the next purchase, may be fractional */
  readonly parcels: number;
  /** at least one */
  readonly ways: readonly MixWay[];
};

/** What holds the purchase back; null where nothing does. */
export type MixLimits = {
  /** goods and delivery, minor units */
  readonly cashMinor: number | null;
  /**
   * litres of all supplies right after delivery, what is on hand among them. Where that alone takes more, nothing is
   * bought that takes room.
   */
  readonly litres: number | null;
};

/** All that the next purchase depends on: which packs to buy, and which item type to pack in which style. */
export type MixQuestion = {
  readonly supplies: readonly MixSupply[];
  readonly suppliers: readonly MixSupplier[];
  readonly offers: readonly MixOffer[];
  readonly types: readonly MixType[];
  readonly limits: MixLimits;
};
