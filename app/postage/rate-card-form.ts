import { z } from "zod";
import type { SourcedCard } from "#lib/postage/card-rows/card-row";
import { renamedZones } from "#lib/postage/renamed-zones";
import type { Shop } from "#prisma/records/shop";
import type { Zone } from "#prisma/records/zones";
import { neededText } from "../_parts/typed-fields";
import { cardOfForm } from "./card-of-form";

const MOST_LETTERS = 20_000;
const short = z.string().max(200, "At most 200 letters.").optional();

/**
 * A rate card as typed. Each column of the table is one of the shop's zones, by its name.
 *
 * @param shop how numbers are written, and the currency
 * @param zones the shop's zones
 * @returns the schema; it gives the card as it is kept, its zones as ids
 */
export function rateCardForm(shop: Shop, zones: readonly Zone[]) {
  const { measures, currency } = shop;
  return z
    .object({
      service: neededText("Name the service as you call it: parcel, letter box, abroad."),
      validFrom: z.string("Choose a day."),
      validTo: short,
      source: short,
      readOn: short,
      table: neededText("Paste or type the table of prices.", MOST_LETTERS),
      weightUpTo: short,
      longest: short,
      lengthAndGirth: short,
      sides: short,
      heaviest: short,
      divisor: short,
      moreThan: short,
      eachSide: short,
      sizeWeight: short,
      fees: z.string().max(MOST_LETTERS).optional(),
    })
    .transform((typed, context): SourcedCard => {
      const read = cardOfForm(typed, { measures, currency, zones: zones.map(({ name }) => name) });
      if (read.kind === "card") return withZoneIds(read.sourced, zones);
      for (const [field, message] of Object.entries(read.problems)) {
        context.addIssue({ code: "custom", path: [field], message });
      }
      return z.NEVER;
    });
}

/** A card whose zones are ids, as it is kept. */
export function withZoneIds(sourced: SourcedCard, zones: readonly Zone[]): SourcedCard {
  const idOf = (name: string) => zones.find((zone) => zone.name === name)?.id ?? name;
  return { ...sourced, card: renamedZones(sourced.card, idOf) };
}

/** A kept card whose zones are names, as a person reads it. */
export function withZoneNames(sourced: SourcedCard, zones: readonly Zone[]): SourcedCard {
  const nameOf = (id: string) => zones.find((zone) => zone.id === id)?.name ?? "a zone taken off";
  return { ...sourced, card: renamedZones(sourced.card, nameOf) };
}
