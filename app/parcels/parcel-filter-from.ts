import { isDay } from "#lib/units/day";

/** Which parcels are listed, as the address says it. */
export type ListedParcels = {
  readonly itemTypeId?: string;
  readonly text?: string;
  readonly from?: string;
  readonly to?: string;
  readonly before?: string;
};

const LONGEST_TEXT = 120;

/**
 * Reads the filter from the address; what can't be read is left out.
 * @param query parameters of the address: type, text, from, to, before
 * @returns only what was asked
 */
export function parcelFilterFrom(
  query: Readonly<Record<string, string | string[] | undefined>>,
): ListedParcels {
  const asked = (name: string): string => {
    const value = query[name];
    return typeof value === "string" ? value.trim().slice(0, LONGEST_TEXT) : "";
  };
  const [itemTypeId, text, from, to, before] = ["type", "text", "from", "to", "before"].map(asked);
  return {
    ...(itemTypeId ? { itemTypeId } : {}),
    ...(text ? { text } : {}),
    ...(from && isDay(from) ? { from } : {}),
    ...(to && isDay(to) ? { to } : {}),
    ...(before ? { before } : {}),
  };
}

/**
 * The address of a list.
 * @param listed which parcels
 * @returns path with its parameters
 */
export function parcelsAddress(listed: ListedParcels): string {
  const { itemTypeId, ...rest } = listed;
  const query = new URLSearchParams({ ...(itemTypeId ? { type: itemTypeId } : {}), ...rest });
  return query.size === 0 ? "/parcels" : `/parcels?${query.toString()}`;
}
