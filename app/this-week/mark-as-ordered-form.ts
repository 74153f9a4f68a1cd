import { z } from "zod";
import { type Day, isDay } from "#lib/units/day";

const dayField = z.string().refine((text): text is Day => isDay(text));

const formSchema = z.object({
  purchaseId: z.uuid(),
  supplierId: z.string().min(1),
  placedOn: dayField,
  today: dayField.optional(),
  /** kept as a draft instead of being marked as ordered */
  as: z.literal("draft").optional(),
});

/** What the form of one order sends: its own key, the supplier, the day, and the packs by offer. */
export type MarkAsOrderedForm = z.infer<typeof formSchema> & {
  readonly chosen: readonly { readonly offerId: string; readonly packs: number; readonly expectedOn: Day }[];
};

const MOST_PACKS = 9999;

/** What the form said, or the packs that can't be read, by supply's offer. */
export type MarkAsOrderedReading =
  | { readonly kind: "order"; readonly order: MarkAsOrderedForm }
  | { readonly kind: "unreadable-packs"; readonly offerId: string; readonly typed: string }
  | { readonly kind: "nothing-chosen" };

/**
 * Reads the form of one order.
 *
 * @param typed - the fields by name: `packs:<offer>` and `expected:<offer>` for each line, and the head
 * @returns the order, or what to mend
 * @throws ZodError when the head was not made by this screen
 */
export function readMarkAsOrdered(typed: Readonly<Record<string, string>>): MarkAsOrderedReading {
  const chosen: { offerId: string; packs: number; expectedOn: Day }[] = [];
  for (const [name, value] of Object.entries(typed)) {
    if (!name.startsWith("packs:")) continue;
    const offerId = name.slice("packs:".length);
    const packs = /^\d+$/.test(value) ? Number(value) : Number.NaN;
    if (Number.isNaN(packs) || packs > MOST_PACKS) return { kind: "unreadable-packs", offerId, typed: value };
    if (packs > 0) chosen.push({ offerId, packs, expectedOn: dayField.parse(typed[`expected:${offerId}`]) });
  }
  if (chosen.length === 0) return { kind: "nothing-chosen" };
  return { kind: "order", order: { ...formSchema.parse(typed), chosen } };
}
