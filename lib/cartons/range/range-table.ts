/** Parcels that cost the same in every candidate. */
export type RangeRow = {
  /** how many, a whole number from 1 */
  readonly parcels: number;
  /** what one costs in each candidate, whole 1/10,000 minor units; null where the candidate does not hold it */
  readonly values: readonly (number | null)[];
};

/** What the parcels of a year cost in each candidate carton. A size is a candidate by its place, from 0. */
export type RangeTable = {
  readonly candidates: readonly string[];
  readonly rows: readonly RangeRow[];
  /** what a parcel counts that no stocked size holds, whole 1/10,000 minor units: at least the dearest that is held */
  readonly unpackedValue: number;
};

/**
 * A table that makes sense. A parcel that none of the stocked sizes holds must not be cheaper than one that is packed,
 * because a size more would then make the range dearer.
 *
 * @param table as given
 * @returns the same
 * @throws RangeError naming the row or candidate that is wrong
 * @example checkedTable({ candidates: ["8 in cube"], rows: [{ parcels: 3, values: [120] }], unpackedValue: 900 })
 */
export function checkedTable(table: RangeTable): RangeTable {
  const { candidates, rows, unpackedValue } = table;
  if (new Set(candidates).size !== candidates.length) {
    throw new RangeError(`checkedTable requires candidates that differ, got ${candidates.join(", ")}`);
  }
  let most = 0;
  for (const [at, { parcels, values }] of rows.entries()) {
    if (!(Number.isSafeInteger(parcels) && parcels >= 1)) {
      throw new RangeError(`checkedTable requires a whole number of parcels in row ${at}, got ${parcels}`);
    }
    if (values.length !== candidates.length) {
      throw new RangeError(
        `checkedTable requires ${candidates.length} values in row ${at}, got ${values.length}`,
      );
    }
    const wrong = values.findIndex((value) => value !== null && !isHeld(value, unpackedValue));
    if (wrong >= 0) {
      throw new RangeError(
        `checkedTable requires whole values from 0 to the unpacked one of ${unpackedValue}, got ${values[wrong]} for ${candidates[wrong]} in row ${at}`,
      );
    }
    most += parcels * unpackedValue;
  }
  if (!(Number.isSafeInteger(unpackedValue) && unpackedValue >= 0 && Number.isSafeInteger(most))) {
    throw new RangeError(
      `checkedTable requires a whole unpacked value whose sum stays exact, got ${unpackedValue}`,
    );
  }
  return table;
}

const isHeld = (value: number, most: number): boolean =>
  Number.isSafeInteger(value) && value >= 0 && value <= most;
