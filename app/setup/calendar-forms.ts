import { z } from "zod";
import { dayText, neededText } from "../_parts/typed-fields";

/** Days on which the shop packs nothing, both ends included. */
export const closedSpanForm = z
  .object({ fromDay: dayText, toDay: dayText, words: neededText("Say why: holiday, fair, moving house.") })
  .refine((span) => span.fromDay <= span.toDay, {
    path: ["toDay"],
    message: "The last day lies before the first.",
  });

/** Where parcels go, as the postage is priced. */
export const zoneForm = z.object({ name: neededText("Give the zone a name: zone 4, abroad.") });
