import type { ParcelFormInput } from "../parcels/parcel-form";
import { lineUnit, lineValue } from "./card-line";
import type { SupplyChoice } from "./packing-choices";
import type { CardLine, PackingDraft } from "./packing-draft";

/**
 * The parcel on the bench as it is sent to be recorded. Lines of nothing are left out; two references between
 * commas are two orders.
 * @param draft the parcel on the bench
 * @param supplies the shop's supplies
 * @returns the form as the parcels address takes it
 */
export function draftForm(draft: PackingDraft, supplies: readonly SupplyChoice[]): ParcelFormInput {
  return {
    id: draft.id,
    packedOn: draft.packedOn,
    style: draft.style,
    pieces: draft.pieces.map((piece) => ({ ...piece })),
    cartons: draft.cartons.map((carton) => ({
      supplyId: carton.supplyId,
      ...(carton.sizes.trim() === "" ? {} : { sizesTyped: carton.sizes.trim() }),
      ...(carton.cut.trim() === "" ? {} : { cutTyped: carton.cut.trim() }),
    })),
    lines: draft.lines
      .filter((line) => line.amount > 0)
      .map((line) => ({
        supplyId: line.supplyId,
        amount: line.amount,
        value: lineValue(line),
        unit: unitWord(line, supplies),
        recipeStepId: line.recipeStepId,
        words: line.words,
      })),
    orders: ordersOf(draft),
    zoneId: draft.zoneId,
    scaleTyped: textOrNull(draft.scale),
    promisedTyped: textOrNull(draft.promised),
    postageTyped: textOrNull(draft.postage),
    postedOn: draft.posted ? (draft.postedOn ?? draft.packedOn) : null,
    unusual: draft.unusual,
    note: textOrNull(draft.note),
  };
}

/** Shares given by hand stay while the orders are the same ones; else the parcel is split evenly. */
function ordersOf(draft: PackingDraft): NonNullable<ParcelFormInput["orders"]> {
  const references = orderReferences(draft.orders);
  const known = Object.keys(draft.shares);
  const isSame =
    references.length === known.length && references.every((reference) => known.includes(reference));
  return references.map((reference) => {
    const share = draft.shares[reference];
    return isSame && share !== undefined ? { reference, share } : { reference };
  });
}

function unitWord(line: CardLine, supplies: readonly SupplyChoice[]): string {
  const supply = supplies.find((candidate) => candidate.id === line.supplyId);
  return supply === undefined ? line.shownUnit : lineUnit(line, supply.unit);
}

function orderReferences(text: string): readonly string[] {
  const references = text
    .split(/[,;\n]/)
    .map((part) => part.trim())
    .filter((part) => part !== "");
  return [...new Set(references)];
}

function textOrNull(text: string): string | null {
  return text.trim() === "" ? null : text.trim();
}
