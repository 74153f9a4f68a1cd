import { amountAsTyped } from "#lib/units/amount-text";
import type { Day } from "#lib/units/day";
import { minorUnits } from "#lib/units/money";
import type { OpenPurchaseLine } from "#prisma/records/purchases";
import type { Shop } from "#prisma/records/shop";
import type { FormField } from "../../_parts/form-field";
import { invoiceFields } from "../../buying/invoice-fields";
import { moneyAsTyped } from "./offer-fields";
import type { SupplyScreen } from "./supply-screen";

type Question = {
  readonly screen: Pick<SupplyScreen, "supply" | "offers" | "suppliers">;
  readonly shop: Shop;
  readonly today: Day;
  /** The receipt's own key, so that sending twice books once. */
  readonly key: string;
  /** The order line that came, or null where nothing was ordered. */
  readonly line: OpenPurchaseLine | null;
};

const PAID = ["paid"];

/**
 * The fields of what came in, filled from the order: the real pack and the real price are typed over.
 *
 * @param question what came, and what is known of it
 * @returns the fields in order
 */
export function receiveFields({ screen, shop, today, key, line }: Question): FormField[] {
  const offer =
    screen.offers.find((row) => row.id === line?.offerId) ?? (line === null ? screen.offers[0] : undefined);
  const priceMinor = line === null ? (offer?.priceMinor ?? null) : line.priceMinor;
  const price = priceMinor === null ? "" : moneyAsTyped(minorUnits(priceMinor), shop.minorDigits);
  const packAmount = line?.packAmount ?? offer?.packAmount;
  const packTyped = packAmount === undefined ? undefined : amountAsTyped(packAmount, screen.supply.useUnit);
  const kind: FormField = {
    name: "kind",
    label: "It was",
    kind: "choice",
    value: "paid",
    choices: [
      { value: "paid", words: "bought" },
      { value: "free", words: "free" },
      { value: "saved", words: "saved from parcels that came" },
    ],
  };
  return [
    { name: "id", label: "", kind: "hidden", value: key },
    ...(line === null ? [kind] : orderLine(line)),
    {
      name: "packs",
      label: "Packs that came",
      kind: "number",
      value: line === null ? "1" : String(line.packs),
      required: true,
    },
    {
      name: "packAmount",
      label: "In each pack, really",
      kind: "number",
      value: packTyped,
      hint: "counted or measured, where it is not what was ordered",
      required: true,
    },
    { name: "receivedOn", label: "Came on", kind: "day", value: today, required: true },
    ...(line === null ? [fromWhom(screen)] : []),
    {
      name: "price",
      label: "Price of one pack",
      kind: "number",
      value: price,
      hint: "may stay empty",
      onlyFor: onlyFor(line),
    },
    ...invoiceFields({ shop, severalLines: false, onlyFor: onlyFor(line) }),
    { name: "note", label: "Note", kind: "text" },
    ...(line === null ? [] : restFields()),
  ];
}

/** An order is always bought, so its money fields always show. */
function onlyFor(line: OpenPurchaseLine | null): readonly string[] | undefined {
  return line === null ? PAID : undefined;
}

function orderLine(line: OpenPurchaseLine): FormField[] {
  return [
    { name: "kind", label: "", kind: "hidden", value: "paid" },
    { name: "purchaseLineId", label: "", kind: "hidden", value: line.id },
    { name: "supplierId", label: "", kind: "hidden", value: line.supplierId },
  ];
}

function fromWhom(screen: Question["screen"]): FormField {
  const suppliers = screen.suppliers.map((supplier) => ({ value: supplier.id, words: supplier.name }));
  return {
    name: "supplierId",
    label: "From",
    kind: "choice",
    value: "",
    choices: [{ value: "", words: "somebody else" }, ...suppliers],
    onlyFor: PAID,
  };
}

function restFields(): FormField[] {
  return [
    { name: "moreCame", label: "More came than was ordered", kind: "tick" },
    {
      name: "restPacks",
      label: "Packs that still come",
      kind: "number",
      hint: "left empty: the order is complete",
    },
    { name: "restExpectedOn", label: "The rest should come on", kind: "day" },
  ];
}
