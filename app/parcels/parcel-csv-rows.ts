import { costByKind, type TakenMaterial } from "#lib/packing/cost-by-kind";
import { type CostValue, costValue, minorOfCost, roundHalfEven } from "#lib/units/money";
import type { ParcelSummary } from "#prisma/records/parcel-lists";
import { cartonsText, contentsText } from "./parcel-text";

type Money = { readonly currency: string; readonly minorDigits: number };

/** What a row is made from: the parcel, what it took, and today's prices. */
export type ParcelCsvRow = {
  readonly parcel: ParcelSummary;
  readonly taken: readonly TakenMaterial[];
  readonly prices: ReadonlyMap<string, number>;
};

const MG_PER_GRAM = 1_000;

/**
 * The header of a file of parcels.
 * @param shop its currency stands with the columns of money
 */
export function parcelCsvHeader({ currency }: Money): string[] {
  return [
    "parcel",
    "packed on",
    "contents",
    "pieces",
    "style",
    "cartons",
    "zone",
    "orders",
    "weight in g",
    "weight as typed",
    "promised at most in g",
    "promised as typed",
    "promise",
    `packing cost in ${currency}`,
    `packing at today's prices in ${currency}`,
    `postage in ${currency}`,
    "posted on",
    "arrived broken on",
    "why it broke",
    "what broke",
    "came back on",
    "unusual",
    "void",
    "note",
  ];
}

/**
 * A parcel as a row of a file: weights in grams and money as plain numbers; an empty cell is not known or did not happen.
 * @param row the parcel, what it took, and today's prices
 * @param shop digits of its currency
 * @returns cells in the order of `parcelCsvHeader`
 */
export function parcelCsvCells({ parcel, taken, prices }: ParcelCsvRow, shop: Money): string[] {
  const money = (minor: number | null) =>
    minor === null ? "" : (minor / 10 ** shop.minorDigits).toFixed(shop.minorDigits);
  const cost = (value: CostValue) => money(minorOfCost(value, roundHalfEven));
  const replacement = replacementOf(taken, prices);
  return [
    parcel.id,
    parcel.packedOn,
    contentsText(parcel.pieces),
    String(parcel.pieces.reduce((sum, part) => sum + part.pieces, 0)),
    parcel.style,
    cartonsText(parcel.cartons),
    parcel.zoneName ?? "",
    parcel.orders.map(({ reference }) => reference).join("; "),
    grams(parcel.scaleMg),
    parcel.scaleTyped ?? "",
    grams(parcel.promisedMg),
    parcel.promisedTyped ?? "",
    promiseWord(parcel),
    parcel.costValue === null ? "" : cost(costValue(parcel.costValue)),
    replacement === null ? "" : cost(replacement),
    money(parcel.postageMinor),
    parcel.postedOn ?? "",
    parcel.brokenOn ?? "",
    parcel.brokenOn === null ? "" : (parcel.brokenCause ?? "unknown"),
    parcel.brokenNote ?? "",
    parcel.returnedOn ?? "",
    parcel.unusual ? "yes" : "",
    parcel.voidedAt === null ? "" : (parcel.voidReason ?? "yes"),
    parcel.note ?? "",
  ];
}

function replacementOf(taken: ParcelCsvRow["taken"], prices: ParcelCsvRow["prices"]): CostValue | null {
  const { total } = costByKind(taken, prices);
  return taken.length === 0 || total.replacementUnknown.length > 0 ? null : total.replacement;
}

function grams(mg: number | null): string {
  return mg === null ? "" : String(mg / MG_PER_GRAM);
}

function promiseWord({ promisedMg, scaleMg }: ParcelSummary): string {
  if (promisedMg === null) return "";
  if (scaleMg === null) return "not weighed";
  return scaleMg <= promisedMg ? "kept" : "broken";
}
