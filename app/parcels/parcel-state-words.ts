import type { ParcelState } from "#prisma/records/parcel-filter";

/** States that parcels are looked for by, in words. */
export const STATE_WORDS: readonly { readonly value: ParcelState; readonly words: string }[] = [
  { value: "broken", words: "arrived broken" },
  { value: "promise-broken", words: "weighed more than promised" },
  { value: "unweighed", words: "were not weighed" },
];
