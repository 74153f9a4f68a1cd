import type { UseUnit } from "#lib/units/use-unit";
import type { QuantityUnit } from "./quantity";

/** What a forecast is of. */
export type Subject = {
  readonly kind: "shop" | "item-type" | "supply";
  readonly id: string;
  /** null for the shop */
  readonly name: string | null;
  readonly unit: QuantityUnit;
  readonly href: string;
};

/** The whole shop: parcels. */
export const SHOP_SUBJECT: Subject = {
  kind: "shop",
  id: "shop",
  name: null,
  unit: "parcel",
  href: "/outlook/parcels",
};

/** An item type: pieces. */
export function itemTypeSubject({ id, name }: { readonly id: string; readonly name: string }): Subject {
  return { kind: "item-type", id, name, unit: "piece", href: `/outlook/item-types/${id}` };
}

/** A supply: use units. */
export function supplySubject(supply: {
  readonly id: string;
  readonly name: string;
  readonly useUnit: UseUnit;
}): Subject {
  return {
    kind: "supply",
    id: supply.id,
    name: supply.name,
    unit: supply.useUnit,
    href: `/outlook/supplies/${supply.id}`,
  };
}
