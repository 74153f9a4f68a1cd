import { amountAsTyped, formatAmount } from "#lib/units/amount-text";
import { type Day, maxDay } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import type { OrderLine, PurchaseOrder } from "#prisma/records/purchase-orders";
import type { Shop } from "#prisma/records/shop";
import type { Supply } from "#prisma/records/supplies";
import type { FieldGroup, FormField } from "../_parts/form-field";
import { invoiceFields } from "./invoice-fields";
import { MORE_CAME, PRICE_IS_RIGHT } from "./receive-line-form";

/** Rows for what came along without being ordered. */
export const EXTRA_ROWS = [1, 2] as const;

type ReceiveQuestion = {
  readonly order: PurchaseOrder;
  readonly supplies: readonly Supply[];
  readonly shop: Shop;
  readonly today: Day;
  /** the receipt's own key, so that sending twice books once */
  readonly key: string;
};

/** The form of an order that came: a group for each line that is open, and what the invoice says. */
export type ReceiveOrderForm = { readonly groups: FieldGroup[]; readonly fields: FormField[] };

/**
 * The form of an order that came, filled with what was ordered: what was different is typed over.
 *
 * @param question the order, the supplies, the day
 * @returns groups by line, then the fields of the invoice
 */
export function receiveOrderFields(question: ReceiveQuestion): ReceiveOrderForm {
  const { order, shop, today, key } = question;
  const isFirst = order.lines.every((line) => line.arrivals.length === 0);
  const delivery =
    !isFirst || order.deliveryMinor === null ? "" : asTyped(order.deliveryMinor, shop.minorDigits);
  return {
    groups: [...order.lines.flatMap((line) => lineGroup(line, question)), extrasGroup(question.supplies)],
    fields: [
      { name: "id", label: "", kind: "hidden", value: key },
      { name: "receivedOn", label: "Came on", kind: "day", value: today, required: true },
      ...invoiceFields({ shop, delivery, severalLines: order.lines.length > 1 }),
      { name: "note", label: "Note", kind: "text" },
    ],
  };
}

function lineGroup(line: OrderLine, { shop, today }: ReceiveQuestion): FieldGroup[] {
  const { open } = line;
  if (open === null) return [];
  const on = (name: string) => `${name}:${open.lineId}`;
  const price = line.priceMinor === null ? "" : asTyped(line.priceMinor, shop.minorDigits);
  return [
    {
      title: line.supply,
      note: groupNote(line, open),
      fields: [
        {
          name: on("came"),
          label: "Packs that came",
          kind: "number",
          value: String(open.packs),
          hint: "0: none of it yet",
        },
        {
          name: on("amount"),
          label: "In each pack, really",
          kind: "number",
          value: amountAsTyped(line.packAmount, line.unit),
          hint: "counted or measured",
        },
        {
          name: on("price"),
          label: "Price of one pack",
          kind: "number",
          value: price,
          hint: "may stay empty",
        },
        {
          name: on("rest"),
          label: "If fewer came, the rest",
          kind: "choice",
          value: "comes",
          choices: [
            { value: "comes", words: "still comes" },
            { value: "never", words: "does not come" },
          ],
        },
        {
          name: on("restOn"),
          label: "and is expected on",
          kind: "day",
          value: maxDay(open.expectedOn, today),
        },
        { name: on("more"), label: MORE_CAME, kind: "tick", onlyWhenAsked: true },
        { name: on("sure"), label: PRICE_IS_RIGHT, kind: "tick", onlyWhenAsked: true },
      ],
    },
  ];
}

function groupNote(line: OrderLine, open: NonNullable<OrderLine["open"]>): string {
  const packs = `${open.packs} ${open.packs === 1 ? "pack" : "packs"}`;
  const pack = line.pack ?? formatAmount(line.packAmount, line.unit);
  const withdrawn = line.offerRetired
    ? " This offer was withdrawn since; what was ordered can still come."
    : "";
  return `${packs} on order (${pack}), expected ${formatDay(open.expectedOn, { weekday: true })}.${withdrawn}`;
}

function extrasGroup(supplies: readonly Supply[]): FieldGroup {
  const choices = supplies.map((supply) => ({ value: supply.id, words: supply.name }));
  return {
    title: "Something came along that was not ordered, free of charge",
    note: "It goes into stock at no cost and leaves the price that you paid as it is.",
    isFolded: true,
    fields: EXTRA_ROWS.flatMap((row): FormField[] => [
      {
        name: `extra:${row}`,
        label: row === 1 ? "Supply" : "Another supply",
        kind: "choice",
        value: "",
        choices: [{ value: "", words: "nothing" }, ...choices],
      },
      { name: `extraPacks:${row}`, label: row === 1 ? "Packs" : "Packs of it", kind: "number", value: "" },
      {
        name: `extraAmount:${row}`,
        label: row === 1 ? "In each pack" : "In each pack of it",
        kind: "number",
        value: "",
      },
    ]),
  };
}

function asTyped(minor: number, minorDigits: number): string {
  return (minor / 10 ** minorDigits).toFixed(minorDigits);
}
