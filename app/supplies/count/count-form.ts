import { z } from "zod";
import { neededText, optionalText } from "../../_parts/typed-fields";

/** The ways a line of the shelf can be counted. */
export const COUNT_METHODS = ["number", "roll", "height", "weight", "looks-right"] as const;

export type CountMethod = (typeof COUNT_METHODS)[number];

const found = {
  id: neededText("The form lost its key. Load the page again."),
  supplyId: neededText("Choose a supply."),
};

/**
 * One line of the counting walk as sent: a method and what was typed. "Looks right" needs no text; the book's
 * own figure then stands as counted.
 */
export const countForm = z.discriminatedUnion("method", [
  z.object({ ...found, method: z.literal("looks-right"), typed: optionalText, note: optionalText }),
  z.object({
    ...found,
    method: z.enum(["number", "roll", "height", "weight"]),
    typed: neededText("Write what is on the shelf, or press Looks right."),
    note: optionalText,
  }),
]);
