import { ButtonLink } from "../../_parts/button-link";
import { type ListedParcels, parcelsAddress } from "../parcel-filter-from";

/** The way to the parcels before the last one shown. */
export function OlderParcels({ filter, last }: { readonly filter: ListedParcels; readonly last: string }) {
  return <ButtonLink href={parcelsAddress({ ...filter, before: last })}>Older parcels</ButtonLink>;
}
