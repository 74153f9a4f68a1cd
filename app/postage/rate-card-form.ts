import { z } from "zod";
import { rateCardFaults } from "#lib/postage/rate-card-faults";
import { readRateTable } from "#lib/postage/rate-table";
import { cardOf, type KeptRateCard } from "#prisma/records/rate-cards";
import type { Shop } from "#prisma/records/shop";
import type { Zone } from "#prisma/records/zones";
import { dayText, neededText } from "../_parts/typed-fields";

const MOST_LETTERS = 20_000;

/**
 * A rate card as typed: service, days and table. Each column of the table is one of the shop's zones, by its name.
 *
 * @param shop how numbers are written, and the currency
 * @param zones the shop's zones
 * @returns the schema; it gives the card as it is kept, without its id
 */
export function rateCardForm(shop: Shop, zones: readonly Zone[]) {
  return z
    .object({
      service: neededText("Name the service as you call it: parcel, letter box, abroad."),
      validFrom: dayText,
      validTo: dayText.optional().transform((on) => on ?? null),
      table: neededText("Paste or type the table of prices.", MOST_LETTERS),
    })
    .transform((typed, context): Omit<KeptRateCard, "id"> => {
      const table = readRateTable(typed.table, shop);
      if (table.kind === "unreadable") return refusal(context, table.problems);
      const found = table.zones.map((name) => zoneCalled(name, zones));
      const unknown = table.zones.filter((_, at) => found[at] === undefined);
      if (unknown.length > 0)
        return refusal(
          context,
          unknown.map((name) => unknownZone(name, zones)),
        );
      const card = { ...typed, zoneIds: found.flatMap((zone) => (zone === undefined ? [] : [zone.id])) };
      const errors = rateCardFaults(cardOf(card, shop)).filter(({ severity }) => severity === "error");
      return errors.length > 0
        ? refusal(
            context,
            errors.map(({ message }) => message),
          )
        : card;
    });
}

function zoneCalled(name: string, zones: readonly Zone[]): Zone | undefined {
  return zones.find((zone) => zone.name.trim().toLowerCase() === name.toLowerCase());
}

function unknownZone(name: string, zones: readonly Zone[]): string {
  const known =
    zones.length === 0
      ? "The shop has no zones yet"
      : `The zones are ${zones.map((zone) => zone.name).join(", ")}`;
  return `“${name}” is no zone of yours. ${known}: rename the column, or add the zone in Setup.`;
}

function refusal(context: z.RefinementCtx, problems: readonly string[]): never {
  context.addIssue({ code: "custom", path: ["table"], message: problems.join(" ") });
  return z.NEVER;
}
