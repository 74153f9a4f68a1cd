import { z } from "zod";

const MOST_PACKS = 9_999;
const MOST_LINES = 400;

/** Orders that a plan hands over: packs by offer. */
export type HandedOrders = readonly { readonly offerId: string; readonly packs: number }[];

/**
 * The orders of a plan in a hidden field.
 *
 * @param orders of the plan
 * @returns a line for each offer: packs, a space, the offer's id
 * @example orderField([{ lines: [{ offerId: "roll", packs: 2 }] }]) // "2 roll"
 */
export function orderField(orders: readonly { readonly lines: HandedOrders }[]): string {
  return orders.flatMap(({ lines }) => lines.map(({ offerId, packs }) => `${packs} ${offerId}`)).join("\n");
}

const lineText = z
  .string()
  .regex(/^[1-9]\d{0,3} \S.*$/)
  .transform((text) => {
    const gap = text.indexOf(" ");
    return { packs: Number(text.slice(0, gap)), offerId: text.slice(gap + 1) };
  })
  .refine(({ packs }) => packs <= MOST_PACKS);

/** What the form sends: the plan's own key, so that it is handed over once, and its orders. */
export const handedForm = z.object({
  key: z.uuid(),
  order: z
    .string()
    .transform((text) => text.split(/\r?\n/))
    .pipe(z.array(lineText).min(1).max(MOST_LINES)),
});
