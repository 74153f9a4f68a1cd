import { z } from "zod";

const LONGEST_NOTE = 2000;
const MOST_LINES = 60;
const WHOLE_SHARE = 12_000;

const DAY_TEXT = /^\d{4}-\d{2}-\d{2}$/;
const KEY_TEXT = /^[0-9A-Za-z][0-9A-Za-z-]{7,63}$/;

const slug = z.string().min(1).max(120);
const dayText = z.string().regex(DAY_TEXT, "is a day like 2026-11-25");

const formLine = z.object({
  supplyId: slug,
  /** What a person typed: "1 1/3". */
  value: z.string().max(40).optional(),
  /** Unit of `value`; the supply's use unit where it is left out. */
  unit: z.string().max(24).optional(),
  /** Or the stored amount itself: integer of 1/12,000 use unit. */
  amount: z.number().int().nonnegative().optional(),
  recipeStepId: slug.nullish(),
  words: z.string().max(200).nullish(),
});

const formCarton = z.object({
  supplyId: slug.nullable(),
  /** Inside sizes of a saved odd carton: "12 x 9 x 8". */
  sizesTyped: z.string().max(60).nullish(),
  /** Height that it was cut down to: "6". */
  cutTyped: z.string().max(30).nullish(),
});

const formOrder = z.object({
  reference: z.string().trim().min(1).max(120),
  /** Share of the parcel, of 12,000. */
  share: z.number().int().positive().max(WHOLE_SHARE).optional(),
});

/**
 * A parcel as a screen or another program sends it. The key `id` is made by the sender: the same key with the
 * same content is the same parcel, however often it is sent.
 */
export const parcelForm = z.object({
  id: z.string().regex(KEY_TEXT, "is a key of 8 to 64 letters, digits and hyphens"),
  packedOn: dayText,
  style: z.enum(["paper", "bubble", "mixed"]),
  pieces: z
    .array(z.object({ itemTypeId: slug, pieces: z.number().int().min(1).max(999) }))
    .min(1)
    .max(20)
    .refine((list) => new Set(list.map((piece) => piece.itemTypeId)).size === list.length, {
      message: "names each item type once",
    }),
  cartons: z.array(formCarton).max(4).optional(),
  lines: z.array(formLine).max(MOST_LINES).optional(),
  orders: z.array(formOrder).max(20).default([]),
  zoneId: slug.nullish(),
  /** Scale reading as typed: "2 lb 15 oz". */
  scaleTyped: z.string().trim().max(40).nullish(),
  /** The band promised at listing, by the most it may weigh: "2 lb". */
  promisedTyped: z.string().trim().max(40).nullish(),
  /** Postage paid, as typed: "9.80"; or in minor units. */
  postageTyped: z.string().trim().max(40).nullish(),
  postageMinor: z.number().int().nonnegative().nullish(),
  postedOn: dayText.nullish(),
  unusual: z.boolean().default(false),
  note: z.string().trim().max(LONGEST_NOTE).nullish(),
  countedSameDay: z.enum(["before", "after"]).optional(),
});

/** What is sent. */
export type ParcelFormInput = z.input<typeof parcelForm>;
/** What was read. */
export type ParcelForm = z.output<typeof parcelForm>;
