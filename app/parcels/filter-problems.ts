import { CUSHION_STYLES } from "#lib/packing/recipe-version";
import { isDay } from "#lib/units/day";
import { PARCEL_STATES } from "#prisma/records/parcel-filter";
import { type AddressQuery, typedText } from "./parcel-filter-from";
import type { ParcelProblem } from "./parcel-problem";

const WORDS_OF = { style: CUSHION_STYLES, only: PARCEL_STATES };

/**
 * What can't be read of the parcels that an address asks for.
 *
 * @param query parameters of the address: from, to, style, only
 * @returns a problem for each that can't be read, and one where the last day lies before the first
 * @example filterProblems({ from: "yesterday" })[0].message // "“yesterday” is no day."
 */
export function filterProblems(query: AddressQuery): readonly ParcelProblem[] {
  const days = { from: typedText(query["from"]), to: typedText(query["to"]) };
  const unread = (["from", "to"] as const)
    .filter((field) => days[field] !== "" && !isDay(days[field]))
    .map((field) => ({
      field,
      message: `“${days[field]}” is no day.`,
      wayOut: "Give it as year, month and day, like 2026-11-25.",
    }));
  const unknown = (["style", "only"] as const).flatMap((field) => {
    const asked = typedText(query[field]);
    const known: readonly string[] = WORDS_OF[field];
    return asked === "" || known.includes(asked)
      ? []
      : [{ field, message: `“${asked}” is not known.`, wayOut: `Take one of: ${known.join(", ")}.` }];
  });
  const isTurned = unread.length === 0 && days.from !== "" && days.to !== "" && days.to < days.from;
  const turned = {
    field: "to",
    message: `${days.to} lies before ${days.from}.`,
    wayOut: "Choose a last day on or after the first.",
  };
  return [...unread, ...unknown, ...(isTurned ? [turned] : [])];
}
