import { CUSHION_STYLES } from "#lib/packing/recipe-version";
import { isDay } from "#lib/units/day";
import { PARCEL_STATES, type ParcelFilter } from "#prisma/records/parcel-filter";

/** Which parcels are listed, as the address says it. */
export type ListedParcels = ParcelFilter & { readonly before?: string };

/** Parameters of an address. */
export type AddressQuery = Readonly<Record<string, string | string[] | undefined>>;

const LONGEST_TEXT = 120;
const NAMES = {
  itemTypeId: "type",
  text: "text",
  from: "from",
  to: "to",
  style: "style",
  cartonId: "carton",
  zoneId: "zone",
  state: "only",
  before: "before",
} as const satisfies Record<keyof ListedParcels, string>;

/**
 * Reads the filter from the address; what can't be read is left out.
 * @param query parameters of the address: type, text, from, to, style, carton, zone, only, before
 * @returns only what was asked
 */
export function parcelFilterFrom(query: AddressQuery): ListedParcels {
  const asked = (key: keyof ListedParcels): string => typedText(query[NAMES[key]]);
  const [itemTypeId, text, from, to] = [asked("itemTypeId"), asked("text"), asked("from"), asked("to")];
  const [cartonId, zoneId, before] = [asked("cartonId"), asked("zoneId"), asked("before")];
  const style = CUSHION_STYLES.find((known) => known === asked("style"));
  const state = PARCEL_STATES.find((known) => known === asked("state"));
  return {
    ...(itemTypeId ? { itemTypeId } : {}),
    ...(text ? { text } : {}),
    ...(isDay(from) ? { from } : {}),
    ...(isDay(to) ? { to } : {}),
    ...(style ? { style } : {}),
    ...(cartonId ? { cartonId } : {}),
    ...(zoneId ? { zoneId } : {}),
    ...(state ? { state } : {}),
    ...(before ? { before } : {}),
  };
}

/** Text of a parameter, without spaces at its ends; empty where it is not given once. */
export function typedText(value: string | string[] | undefined): string {
  return typeof value === "string" ? value.trim().slice(0, LONGEST_TEXT) : "";
}

/**
 * The address of a list.
 * @param listed which parcels
 * @param path of the screen or the route that reads such an address
 * @returns path with its parameters
 */
export function parcelsAddress(listed: ListedParcels, path = "/parcels"): string {
  const given = Object.entries(listed).map(([key, value]) => [NAMES[key as keyof ListedParcels], value]);
  const query = new URLSearchParams(Object.fromEntries(given));
  return query.size === 0 ? path : `${path}?${query.toString()}`;
}
