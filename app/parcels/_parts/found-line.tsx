import { type ListedParcels, parcelsAddress } from "../parcel-filter-from";
import styles from "./parcels.module.css";

type FoundLineProps = {
  readonly count: number;
  readonly filter: ListedParcels;
  readonly isFiltered: boolean;
};

/** How many parcels the search found, and the way to take them along. */
export function FoundLine({ count, filter, isFiltered }: FoundLineProps) {
  const { before: _page, ...asked } = filter;
  const parcels = count === 1 ? "1 parcel" : `${count} parcels`;
  return (
    <p className={styles.found}>
      <span>{isFiltered ? `${parcels} found.` : `${parcels} in all.`}</span>
      {count === 0 ? null : (
        <a href={parcelsAddress(asked, "/api/parcels.csv")} download className={styles.take}>
          Take as CSV
        </a>
      )}
    </p>
  );
}
