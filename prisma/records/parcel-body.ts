import { createHash } from "node:crypto";
import type { CushionStyle } from "#lib/packing/recipe-version";
import type { Amount } from "#lib/units/amount";

/** One line of a parcel's bill of materials, without its cartons. The amount is what was used, above 0. */
export type ParcelLine = {
  readonly supplyId: string;
  readonly amount: Amount;
  readonly recipeStepId: string | null;
  readonly typedValue: string;
  readonly typedUnit: string;
  readonly words?: string;
};

/** A carton of the parcel, outermost first; `supplyId` null for a saved odd one in no list. */
export type ParcelCartonUse = {
  readonly supplyId: string | null;
  readonly sizesTyped?: string;
  readonly cutTyped?: string;
};

/** A parcel as its packer states it. `id` is the key that the client made. */
export type ParcelBody = {
  readonly id: string;
  readonly packedOn: string;
  readonly style: CushionStyle;
  readonly pieces: readonly { readonly itemTypeId: string; readonly pieces: number }[];
  readonly cartons: readonly ParcelCartonUse[];
  readonly lines: readonly ParcelLine[];
  /** Share of 12,000; left out, the orders bear equal shares. */
  readonly orders: readonly { readonly reference: string; readonly share?: number }[];
  readonly zoneId: string | null;
  readonly scaleMg: number | null;
  readonly scaleTyped: string | null;
  /** The most it may weigh by what was promised at listing, as typed too. */
  readonly promised?: { readonly mg: number; readonly typed: string };
  readonly postageMinor: number | null;
  readonly postedOn: string | null;
  readonly unusual: boolean;
  readonly note: string | null;
  /** Where a count fell on the packed day: was the parcel packed before it or after? */
  readonly countedSameDay?: "before" | "after";
};

/**
 * The fingerprint of a parcel's body: the same key with the same fingerprint is the same parcel.
 *
 * @param body the parcel
 * @returns SHA-256 in hex over the body with its keys in a fixed order
 */
export function parcelBodyHash(body: ParcelBody): string {
  return createHash("sha256").update(canonical(body)).digest("hex");
}

function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join(",")}]`;
  if (value !== null && typeof value === "object") {
    const entries = Object.entries(value)
      .filter(([, part]) => part !== undefined)
      .sort(([a], [b]) => (a < b ? -1 : 1));
    return `{${entries.map(([key, part]) => `${JSON.stringify(key)}:${canonical(part)}`).join(",")}}`;
  }
  return JSON.stringify(value);
}
