import { amount } from "#lib/units/amount";
import { day } from "#lib/units/day";
import type { ParcelFormInput } from "../parcels/parcel-form";
import { shownUnit } from "./card-line";
import type { PackingChoices } from "./packing-choices";
import type { CardLine, PackingDraft } from "./packing-draft";

/**
 * A kept parcel put back on the bench, so that it can be mended. Lines of supplies that the shop no longer has are left
 * out: the book would refuse them.
 * @param form the parcel as this bench sent it
 * @param choices what the shop has
 * @returns the draft under the parcel's own key
 * @throws RangeError if a line has no amount, which this bench never sends
 */
export function draftOfForm(form: ParcelFormInput, choices: PackingChoices): PackingDraft {
  const orders = form.orders ?? [];
  return {
    id: form.id,
    pieces: form.pieces,
    style: form.style,
    zoneId: form.zoneId ?? null,
    packedOn: day(form.packedOn),
    cartons: (form.cartons ?? []).map((carton) => ({
      supplyId: carton.supplyId,
      sizes: carton.sizesTyped ?? "",
      cut: carton.cutTyped ?? "",
    })),
    lines: (form.lines ?? []).flatMap((line, index) => cardLine(line, index, choices)),
    scale: form.scaleTyped ?? "",
    promised: form.promisedTyped ?? "",
    postage: form.postageTyped ?? "",
    orders: orders.map((order) => order.reference).join(", "),
    shares: Object.fromEntries(
      orders.flatMap(({ reference, share }) => (share === undefined ? [] : [[reference, share]])),
    ),
    posted: form.postedOn != null,
    postedOn: form.postedOn == null || form.postedOn === form.packedOn ? null : day(form.postedOn),
    unusual: form.unusual ?? false,
    note: form.note ?? "",
    withoutRecipe: [],
    overfull: false,
  };
}

type FormLine = NonNullable<ParcelFormInput["lines"]>[number];

function cardLine(line: FormLine, index: number, choices: PackingChoices): readonly CardLine[] {
  const supply = choices.supplies.find((candidate) => candidate.id === line.supplyId);
  if (supply === undefined) return [];
  if (line.amount === undefined)
    throw new RangeError("draftOfForm requires lines with an amount, got one without");
  return [
    {
      key: `kept-${index}`,
      supplyId: line.supplyId,
      amount: amount(line.amount),
      ...shownUnit(supply, line.unit ?? null, choices.measures),
      words: line.words ?? null,
      recipeStepId: line.recipeStepId ?? null,
    },
  ];
}
