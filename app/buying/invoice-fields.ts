import type { Shop } from "#prisma/records/shop";
import type { FormField } from "../_parts/form-field";

/** How the fields of an invoice start, and how many lines it may have. */
type InvoiceQuestion = {
  readonly shop: Shop;
  /** delivery as expected, as typed */
  readonly delivery?: string;
  /** an invoice of several lines is asked how to share delivery and tax */
  readonly severalLines: boolean;
  readonly onlyFor?: readonly string[] | undefined;
};

/**
 * The fields of what an invoice says beside its lines.
 *
 * @param question the shop and how the fields start
 * @returns the fields in order
 */
export function invoiceFields(question: InvoiceQuestion): FormField[] {
  const { shop, delivery = "", severalLines, onlyFor } = question;
  const shareRule: FormField = {
    name: "shareRule",
    label: "Share delivery and tax over the lines",
    kind: "choice",
    value: "price",
    choices: [
      { value: "price", words: "by what each line costs" },
      { value: "packs", words: "equally by pack" },
    ],
    hint: "what is light and cheap bears less by cost, bulky packs bear more by pack",
    onlyFor,
  };
  return [
    { name: "delivery", label: "Delivery, whole invoice", kind: "number", value: delivery, onlyFor },
    { name: "tax", label: "Tax, whole invoice", kind: "number", onlyFor },
    { name: "taxOnTop", label: "The prices are without tax: add it", kind: "tick", onlyFor },
    ...(severalLines ? [shareRule] : []),
    {
      name: "currency",
      label: "Currency of the invoice",
      kind: "text",
      value: shop.currency,
      onlyFor,
    },
    {
      name: "rate",
      label: `One of it in ${shop.currency}`,
      kind: "number",
      hint: "only for another currency: 1.0836",
      onlyFor,
    },
  ];
}
