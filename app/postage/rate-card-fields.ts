import type { Day } from "#lib/units/day";
import type { KeptRateCard } from "#prisma/records/rate-cards";
import type { Zone } from "#prisma/records/zones";
import type { FormField } from "../_parts/form-field";

/**
 * The fields of a rate card.
 *
 * @param card the card, or null for a new one
 * @param zones the shop's zones, for the example
 * @param today first day of a new card
 * @returns the fields in order
 */
export function rateCardFields(card: KeptRateCard | null, zones: readonly Zone[], today: Day): FormField[] {
  const [first = "Near", second] = zones.map((zone) => zone.name);
  const names = second === undefined ? first : `${first}  ${second}`;
  const prices = second === undefined ? "4.60" : "4.60  5.20";
  return [
    {
      name: "service",
      label: "Service",
      kind: "text",
      value: card?.service,
      required: true,
      hint: "as you call it",
    },
    { name: "validFrom", label: "Holds from", kind: "day", value: card?.validFrom ?? today, required: true },
    {
      name: "validTo",
      label: "Last day",
      kind: "day",
      value: card?.validTo ?? undefined,
      hint: "empty: until further notice",
    },
    {
      name: "table",
      label: "Table of prices",
      kind: "lines",
      value: card?.table,
      required: true,
      hint: `Copy it from the carrier's list. First row: up to  ${names}. Then a row for each weight step: 8 oz  ${prices}. Two spaces or a tab between.`,
    },
  ];
}
