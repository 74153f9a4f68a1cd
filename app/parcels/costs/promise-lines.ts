import { promisesKept } from "#lib/packing/weight/promises-kept";
import type { PromisedParcel } from "#prisma/records/promised-parcels";

/** Promises of one item type; `itemTypeId` is null for all together. */
export type PromiseLine = ReturnType<typeof promisesKept> & {
  readonly itemTypeId: string | null;
  /** promised and never weighed, so that nobody knows */
  readonly unweighed: number;
};

/**
 * How often the promised weight held, by item type, the most promised first, and all together where there are several.
 *
 * @param promised parcels with a promise
 */
export function promiseLines(promised: readonly PromisedParcel[]): readonly PromiseLine[] {
  const ids = [...new Set(promised.map(({ itemTypeId }) => itemTypeId))];
  const lines = ids
    .map((itemTypeId) =>
      promiseLine(
        itemTypeId,
        promised.filter((parcel) => parcel.itemTypeId === itemTypeId),
      ),
    )
    .toSorted((a, b) => b.made - a.made || b.unweighed - a.unweighed);
  return ids.length < 2 ? lines : [...lines, promiseLine(null, promised)];
}

function promiseLine(itemTypeId: string | null, promised: readonly PromisedParcel[]): PromiseLine {
  const weighed = promised.flatMap(({ promisedMg, scaleMg }) =>
    scaleMg === null ? [] : [{ promisedMg, scaleMg }],
  );
  return { itemTypeId, unweighed: promised.length - weighed.length, ...promisesKept(weighed) };
}
