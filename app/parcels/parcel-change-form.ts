import { z } from "zod";
import { BROKEN_CAUSES } from "./broken-causes";

const day = z.string("Choose a day.").regex(/^\d{4}-\d{2}-\d{2}$/, "Choose a day.");
const parcelId = z.string().min(1).max(64);

/** Why a parcel is void. */
export const voidForm = z.object({
  parcelId,
  reason: z.string("Say why in a few words: recorded twice, never sent.").max(200, "Say it in fewer words."),
});

const CAUSES = BROKEN_CAUSES.map(({ value }) => value);

/** A parcel that arrived broken. */
export const brokenForm = z.object({
  parcelId,
  on: day,
  cause: z
    .string("Choose what went wrong; “not known” is an answer.")
    .refine((cause) => CAUSES.includes(cause), "Choose one of the list."),
  note: z
    .string("Say what broke and how: rim of one mug, at the corner.")
    .max(2000, "Say it in fewer words."),
});

/** A parcel that came back; the amounts stand in fields of their own. */
export const returnedForm = z.object({ parcelId, on: day });

/** A parcel that was posted. */
export const postedForm = z.object({ parcelId, on: day });
