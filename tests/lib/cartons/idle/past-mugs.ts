import type { PastParcel } from "#lib/cartons/idle/past-parcel";
import { CENT, IN, MUG, MUG_TERMS } from "../choice/mug-bench";

/** A mug that went in another carton, with what it cost then in cents. */
export function pastMug(
  id: string,
  paid: { readonly materials: number; readonly postage: number | null },
  more: Partial<PastParcel> = {},
): PastParcel {
  return {
    ...{ id, itemTypeId: "mug", cartonId: "cube-8", load: MUG, loadType: "difficult" },
    clearance: { wallsUm: IN, baseUm: IN, topUm: IN },
    terms: MUG_TERMS,
    paid: {
      materialsValue: paid.materials * CENT,
      postageValue: paid.postage === null ? null : paid.postage * CENT,
    },
    ...more,
  };
}
