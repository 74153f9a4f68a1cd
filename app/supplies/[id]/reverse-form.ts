import { z } from "zod";
import { neededText } from "../../_parts/typed-fields";

/** Which line of the ledger is taken back, and why. */
export const reverseForm = z.object({
  movementId: z.string("Choose a line.").regex(/^\d+$/, "Choose a line.").transform(Number),
  reason: neededText("Say in a few words why this line is taken back."),
});
