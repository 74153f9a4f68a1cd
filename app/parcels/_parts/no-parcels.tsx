import Link from "next/link";

/** What an empty list says, and what to do first. */
export function NoParcels({ isFiltered }: { readonly isFiltered: boolean }) {
  if (isFiltered) {
    return (
      <p>
        No parcel fits this search. <Link href="/parcels">Show all parcels</Link>.
      </p>
    );
  }
  return (
    <p>
      No parcel is recorded yet. Under <Link href="/pack">Pack</Link> tap what you packed and record it: from
      then on this list says what each one took and cost. Parcels kept in a table so far come in by{" "}
      <Link href="/setup/import">Import</Link>.
    </p>
  );
}
