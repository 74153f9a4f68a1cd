import { CUSHION_STYLES } from "#lib/packing/recipe-version";
import { amount } from "#lib/units/amount";
import { day } from "#lib/units/day";
import type { ParcelDetail } from "#prisma/records/parcel-lists";
import { shownUnit } from "../pack/card-line";
import type { PackingChoices } from "../pack/packing-choices";
import type { CardLine, PackingDraft } from "../pack/packing-draft";
import { parcelBill } from "./parcel-bill";

/**
 * A recorded parcel put back on the bench, so that it can be corrected.
 * @param parcel with its movements
 * @param choices what the shop has, retired supplies among them
 * @returns the draft under the parcel's own key
 */
export function draftOfParcel(parcel: ParcelDetail, choices: PackingChoices): PackingDraft {
  const minorPerMajor = 10 ** choices.minorDigits;
  return {
    id: parcel.id,
    pieces: parcel.pieces.map(({ itemTypeId, pieces }) => ({ itemTypeId, pieces })),
    style: CUSHION_STYLES.find((style) => style === parcel.style) ?? "mixed",
    zoneId: parcel.zoneId,
    packedOn: day(parcel.packedOn),
    cartons: parcel.cartons.map((carton) => ({
      supplyId: carton.supplyId,
      sizes: carton.sizesTyped ?? "",
      cut: carton.cutTyped ?? "",
    })),
    lines: billLines(parcel, choices),
    scale: parcel.scaleTyped ?? "",
    promised: parcel.promisedTyped ?? "",
    postage:
      parcel.postageMinor === null ? "" : (parcel.postageMinor / minorPerMajor).toFixed(choices.minorDigits),
    orders: parcel.orders.map((order) => order.reference).join(", "),
    shares: Object.fromEntries(parcel.orders.map((order) => [order.reference, order.share])),
    posted: parcel.postedOn !== null,
    postedOn: parcel.postedOn === null ? null : day(parcel.postedOn),
    unusual: parcel.unusual,
    note: parcel.note ?? "",
    withoutRecipe: [],
    overfull: false,
  };
}

/** The lines of the card: the bill without one movement for each listed carton. */
function billLines(parcel: ParcelDetail, choices: PackingChoices): readonly CardLine[] {
  const cartonsLeft = parcel.cartons.flatMap((carton) => (carton.supplyId === null ? [] : [carton.supplyId]));
  return parcelBill(parcel).flatMap((movement): CardLine[] => {
    const carton = cartonsLeft.indexOf(movement.supplyId);
    if (carton >= 0) {
      cartonsLeft.splice(carton, 1);
      return [];
    }
    const supply = choices.supplies.find((candidate) => candidate.id === movement.supplyId);
    if (supply === undefined) return [];
    return [
      {
        key: `movement-${movement.id}`,
        supplyId: movement.supplyId,
        amount: amount(-movement.amount),
        ...shownUnit(supply, movement.typedUnit, choices.measures),
        words: movement.stepWords ?? movement.words,
        recipeStepId: movement.recipeStepId,
      },
    ];
  });
}
